import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { measuresCsv, sheetCsv } from '../../engine/sheet/csv.ts';
import { flagRows } from '../../engine/sheet/flagRows.ts';
import { catalogue, draft, sessionOf, sessions } from '../engine/letter/sample.ts';
import { hostileWords, sessionWithNotes } from '../engine/sheet/hostileWords.ts';
import { measuredRep, measuredSet } from '../engine/sheet/measuredSample.ts';

const csvOf = (note: string): string =>
  sheetCsv(sessionOf([draft({ flags: [{ criterion: 'depth', severity: 'adjust', reps: [1, 2], note }] })]), catalogue);

describe('the sheet as CSV (RFC 4180)', () => {
  it('quotes a field with a comma or a quote, and doubles the quote (section 2, rules 6 and 7)', () => {
    expect(csvOf('3-1-1-0, "slow"')).toContain(',"3-1-1-0, ""slow""",');
  });

  it('ends every record with CR LF and keeps line ends inside quotes (section 2, rules 1 and 6)', () => {
    const csv = csvOf('first\nsecond');
    expect(csv.endsWith('\r\n')).toBe(true);
    expect(csv).toContain('"first\nsecond"');
    expect(csv.replaceAll('"first\nsecond"', '').split('\r\n')).toHaveLength(3);
    expect(csv.replaceAll('\r\n', '').replaceAll('"first\nsecond"', '')).not.toMatch(/[\r\n]/);
  });

  it('has the same number of fields in every record (section 2, rule 4), read back by another library', () => {
    const review = sessionOf([
      draft({ flags: [{ criterion: 'depth', severity: 'correct', reps: 'set', note: 'a, "b"\r\nc' }] }),
      draft({ exercise: 'romanian-deadlift', flags: [{ criterion: 'barPath', severity: 'keep', reps: [3] }] }),
    ]);
    const { data, errors } = Papa.parse<string[]>(sheetCsv(review, catalogue).trimEnd());
    expect(errors).toEqual([]);
    expect(new Set(data.map((record) => record.length)).size).toBe(1);
    const [header = [], ...records] = data;
    const column = (name: string) => records.map((record) => record[header.indexOf(name)]);
    const rows = flagRows(review, catalogue);
    expect(column('exercise')).toEqual(rows.map(({ exercise }) => exercise));
    expect(column('note')).toEqual(['a, "b"\r\nc', '']);
    expect(column('rep')).toEqual(['set', '3']);
    // Frame 40 of 30 a second is 1.333 s.
    expect(column('time')).toEqual(['0:01.333', '0:01.333']);
  });

  it('gives every cell back as it was written, for any session, read by another library', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const { data, errors } = Papa.parse<Record<string, string>>(sheetCsv(review, catalogue), {
          header: true,
          skipEmptyLines: true,
        });
        expect(errors.filter(({ code }) => code !== 'UndetectableDelimiter')).toEqual([]);
        const plain = (cell = ''): string => cell.replace(/^'(?=[=+\-@\t\r])/, '');
        const read = data.map((record) => ({
          exercise: plain(record.exercise),
          clip: plain(record.clip),
          reps: record.rep === 'set' ? 'set' : record.rep?.split(' ').map(Number),
          severity: record.severity,
          seen: plain(record.seen),
          note: plain(record.note),
          cue: plain(record.cue),
          fault: [plain(record.faultId), plain(record.faultName)],
        }));
        const flags = review.entries.flatMap((entry) => entry.flags.map((flag) => ({ entry, flag })));
        const exerciseOf = (id: string) => catalogue.exercises.find((each) => each.id === id);
        expect(read).toEqual(
          flags.map(({ entry, flag }) => {
            const exercise = exerciseOf(entry.exercise);
            const fault = exercise?.faults.find(({ id }) => id === flag.fault);
            return {
              exercise: exercise?.name,
              clip: entry.clips[0]?.name,
              reps: flag.reps === 'set' ? 'set' : [...new Set(flag.reps)],
              severity: flag.severity,
              seen: fault?.seen ?? '',
              note: flag.note,
              cue: fault?.cue.outcome ?? '',
              fault: [flag.fault ?? '', fault?.name ?? ''],
            };
          }),
        );
      }),
      { numRuns: 150 },
    );
  });

  it('says the severity as its word alone, and the fault by id and name after the columns that were there before', () => {
    const flags = [{ criterion: 'depth', severity: 'correct', reps: 'set', fault: 'shortOfDepth' }] as const;
    const [header, record] = sheetCsv(sessionOf([draft({ flags })]), catalogue).split('\r\n');
    expect(header).toBe('exercise,clip,rep,time,frame,criterion,severity,seen,note,cue,faultId,faultName,cautions');
    expect(record).toMatch(/,Depth,correct,/);
    expect(record).toMatch(/,shortOfDepth,[^,]+,".*not medical advice\."$/);
  });

  it('gives any words back', () => {
    fc.assert(
      fc.property(fc.array(hostileWords, { minLength: 1, maxLength: 5 }), (notes) => {
        const { data } = Papa.parse<Record<string, string>>(sheetCsv(sessionWithNotes(notes), catalogue), {
          header: true,
          delimiter: ',',
          newline: '\r\n',
          skipEmptyLines: true,
        });
        const read = data.map(({ note = '' }) => note.replace(/^'(?=[=+\-@\t\r])/, ''));
        expect(read).toEqual(notes.map((note) => note.toWellFormed()));
        for (const { note } of data) expect(note).not.toMatch(/^[=+\-@\t\r]/);
      }),
      { numRuns: 150 },
    );
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx'])(
    'makes %j text for a spreadsheet (common practice)',
    (note) => {
      const { data } = Papa.parse<string[]>(csvOf(note).trimEnd());
      expect(data[1]).toContain(`'${note}`);
    },
  );
});

describe('the measures as CSV (RFC 4180, read by another library)', () => {
  const review = sessionOf([draft({ reps: 2 }), draft({ exercise: 'romanian-deadlift' })]);
  const records = (file: string) => Papa.parse<Record<string, string>>(file.trimEnd(), { header: true });

  it('tells the load of each clip in the units of the trainee, which the heading names', () => {
    const measures = new Map([['back-squat-clip', measuredSet([measuredRep(1)])]]);
    const loaded = sessionOf([{ ...draft({ reps: 2 }), plan: { sets: [{ reps: 5, loadKg: 61.2 }] } }]);
    expect(records(measuresCsv(loaded, catalogue, measures)).data[0]).toMatchObject({ loadKg: '61.2' });
    // 61.2 kg = 134.92 lb, to the nearest half pound.
    const inPounds = { ...loaded, trainee: { ...loaded.trainee, units: 'lb' as const } };
    expect(records(measuresCsv(inPounds, catalogue, measures)).data[0]).toMatchObject({ loadLb: '135' });
  });

  it('has a record a rep with each number, its ± beside it, in seconds and metres', () => {
    const set = measuredSet([
      measuredRep(1, { driftBackM: { value: -0.0125, plusMinus: 0.004 } }),
      measuredRep(2, { romM: null }),
    ]);
    const { data, errors, meta } = records(measuresCsv(review, catalogue, new Map([['back-squat-clip', set]])));
    expect(errors).toEqual([]);
    expect(meta.fields).toHaveLength(5 + 2 * 10 + 2 + 2);
    expect(meta.fields?.slice(-2)).toEqual(['follows', 'scaleFrom']);
    expect(data[0]).toMatchObject({
      exercise: 'Back squat',
      clip: 'Back squat, set 1',
      rep: '1',
      startS: '1',
      endS: '5',
      eccentricS: '2.1',
      eccentricPlusMinusS: '0.05',
      romM: '0.548',
      romPlusMinusM: '0.011',
      depth: 'reached',
    });
    // A number is no formula: it stays one, sign and all.
    expect(data[0]?.driftBackM).toBe('-0.0125');
    expect(data[1]).toMatchObject({ rep: '2', romM: '', romPlusMinusM: '' });
    expect(data).toHaveLength(2);
  });

  it('is a header alone where nothing was measured', () => {
    expect(measuresCsv(review, catalogue, new Map()).split('\r\n')).toHaveLength(2);
  });
});
