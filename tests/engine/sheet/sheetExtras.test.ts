import { describe, expect, it } from 'vitest';
import { type Block, plainText } from '../../../engine/document/document.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { Language } from '../../../engine/language/language.ts';
import { warning } from '../../../engine/recording/warnings.ts';
import type { SheetExtras } from '../../../engine/sheet/sheetExtras.ts';
import { writeSheet } from '../../../engine/sheet/writeSheet.ts';
import { catalogue, draft, sessionOf } from '../letter/sample.ts';
import { measuredRep, measuredSet } from './measuredSample.ts';

const review = sessionOf([
  draft({
    reps: 2,
    flags: [
      { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', reps: [1], note: 'High here' },
      { criterion: 'barPath', severity: 'keep', reps: 'set' },
    ],
  }),
]);

function blocksOf(extras?: SheetExtras, language: Language = 'en'): readonly Block[] {
  return writeSheet(review, gradeSession(review, catalogue), translated(catalogue, language), extras).blocks;
}

function table(blocks: readonly Block[], id: string): Record<string, string>[] {
  const found = blocks.find((block) => block.id === id);
  if (found?.kind !== 'table') throw new Error(`no table ${id}`);
  return found.rows.map((row) =>
    Object.fromEntries(
      row.map((cell, index) => [found.columns[index]?.label ?? '', plainText(cell).replaceAll('\u00A0', ' ')]),
    ),
  );
}

const lines = (blocks: readonly Block[]): string[] =>
  blocks.flatMap((block) => (block.kind === 'paragraph' ? [plainText(block.inlines).replaceAll('\u00A0', ' ')] : []));

const measures = (...set: Parameters<typeof measuredSet>): SheetExtras => ({
  measures: new Map([['back-squat-clip', measuredSet(...set)]]),
});

describe('the measures on the sheet', () => {
  it('are none, and nothing else changes, where none are handed in, or those of other clips', () => {
    const without = blocksOf();
    expect(blocksOf({})).toEqual(without);
    expect(blocksOf({ measures: new Map([['another', measuredSet([measuredRep(1)])]]) })).toEqual(without);
    expect(blocksOf(measures([]))).toEqual(without);
  });

  it('stand under the name of their clip with its load', () => {
    const own = blocksOf(measures([measuredRep(1)])).find(({ id }) => id === 'entry-1-measures-1-tempo');
    expect(own?.kind === 'table' && own.caption).toBe(
      '“Back squat, set 1” (80 kg): how long each phase of each rep took',
    );
  });

  it('are about where the body is followed, and say what was followed and why', () => {
    const byBody = {
      follows: 'hands',
      followsBecause: 'noDisc',
      calibration: {
        from: 'body',
        metresPerPixel: 0.004,
        relativeUncertainty: 0.12,
        offAxisDeg: null,
        rollDeg: 0,
        cutOffHz: 4,
      },
    } as const;
    const rough = measuredRep(1, { romM: { value: 0.548, plusMinus: 0.104 } });
    const english = blocksOf(measures([rough], byBody));
    expect(table(english, 'entry-1-measures-1-way')[0]).toMatchObject({
      'Range, cm': 'about 55 ± 11',
      'Peak speed, m/s': 'about 0.8 ± 0.1',
    });
    expect(lines(english)).toContain('What is followed: the hands, because no disc was found that moves with you.');
    const german = blocksOf(measures([rough], byBody), 'de');
    expect(lines(german)).toContain(
      'Verfolgt: die Hände, denn es wurde keine Scheibe gefunden, die sich mit dir bewegt.',
    );
  });

  it('are a row a rep with ±: tempo in seconds, range and drift in centimetres, speed, depth', () => {
    const blocks = blocksOf(measures([measuredRep(1), measuredRep(2)]));
    expect(table(blocks, 'entry-1-measures-1-tempo')[0]).toEqual({
      Rep: '1',
      'Eccentric, s': '2.10 ± 0.05',
      'Pause, stretched, s': '0.40 ± 0.05',
      'Concentric, s': '1.20 ± 0.05',
    });
    expect(table(blocks, 'entry-1-measures-1-way')).toHaveLength(2);
    expect(table(blocks, 'entry-1-measures-1-way')[1]).toEqual({
      Rep: '2',
      'Range, cm': '54.8 ± 1.1',
      'Forward, cm': '3.1 ± 0.5',
      // A hundredth of a centimetre is no nothing: it is rounded up.
      'Back, cm': '0.8 ± 0.1',
      'Mean speed, m/s': '0.46 ± 0.01',
      'Peak speed, m/s': '0.81 ± 0.02',
      Depth: 'reached, 4.3 ± 1.2 cm below',
    });
  });

  it('stand under the remarks of their exercise, before how its grade comes about', () => {
    const ids = blocksOf(measures([measuredRep(1)])).map(({ id }) => id);
    const order = ['entry-1-flags', 'entry-1-measures', 'entry-1-measures-1-tempo', 'entry-1-tree'];
    expect(ids.filter((id) => order.includes(id))).toEqual(order);
  });

  it('leave a dash where one rep has none, and a column out where none has', () => {
    const bare = { romM: null, driftForwardM: null, driftBackM: null, joints: null } as const;
    const rows = table(
      blocksOf(measures([measuredRep(1, bare), measuredRep(2, { ...bare, meanConcentricMps: null })])),
      'entry-1-measures-1-way',
    );
    expect(Object.keys(rows[0] ?? {})).toEqual(['Rep', 'Mean speed, m/s', 'Peak speed, m/s']);
    expect(rows[1]?.['Mean speed, m/s']).toBe('–');
  });

  it('say how far speed fell, what to know first, and what ± means', () => {
    const set = { speedLossPct: { value: 18.4, plusMinus: 2.2 }, romSpreadM: null, eccentricSpreadS: null };
    const said = lines(
      blocksOf(measures([measuredRep(1)], { set, warnings: [warning('farOffAxis', { degrees: 24 })] })),
    );
    expect(said).toContain('From the fastest rep to the last, the mean speed fell by 18 ± 3 per cent.');
    expect(said).toContain('The camera is 24° off square, so drift is not given.');
    expect(said.some((line) => line.includes('nine times in ten'))).toBe(true);
  });

  it('say how many movements were not counted, where there are any', () => {
    const unsure = measuredRep(1, { startS: 8, endS: 9, sureness: 0.3, doubts: ['maybePutDown'] });
    const note = 'One movement was not counted as a rep.';
    expect(lines(blocksOf(measures([measuredRep(1)], { offered: [unsure] })))).toContain(note);
    expect(lines(blocksOf(measures([measuredRep(1)])))).not.toContain(note);
    const german = lines(blocksOf(measures([measuredRep(1)], { offered: [unsure, unsure] }), 'de'));
    expect(german).toContain('2 Bewegungen wurden nicht als Wiederholungen gezählt.');
  });

  it('are written as German writes numbers', () => {
    const [row] = table(blocksOf(measures([measuredRep(1)]), 'de'), 'entry-1-measures-1-way');
    expect(row).toMatchObject({ 'Bewegungsumfang, cm': '54,8 ± 1,1', Tiefe: 'erreicht, 4,3 ± 1,2 cm darunter' });
  });
});

describe('the stills on the sheet', () => {
  const stills = new Map([
    ['back-squat-0', 'stills/squat 1.jpg'],
    ['of-another-session', 'x.jpg'],
  ]);

  it('are named in the row of their flag, and stand below with words in their place', () => {
    const blocks = blocksOf({ stills });
    expect(table(blocks, 'entry-1-flags').map(({ Still }) => Still)).toEqual(['1', '']);
    const pictures = blocks.filter((block) => block.kind === 'picture');
    const fault = catalogue.exercises
      .find(({ id }) => id === 'back-squat')
      ?.faults.find(({ id }) => id === 'shortOfDepth');
    expect(pictures).toEqual([
      {
        kind: 'picture',
        id: 'still-back-squat-0',
        source: 'stills/squat 1.jpg',
        alt: `Back squat, set 1, at 0:01.333. ${fault?.seen}. High here.`,
        caption:
          'Still 1\u00A0· 0:01.333\u00A0· Rep 1\u00A0· Depth\u00A0· correct\u00A0|||. The hip crease staying above the top of the knee. High here.',
      },
    ]);
  });

  it('say the criterion and the severity in place of a picture of praise without words', () => {
    const praise = blocksOf({ stills: new Map([['back-squat-1', 'a.jpg']]) }).find(({ kind }) => kind === 'picture');
    expect(praise?.kind === 'picture' ? praise.alt : '').toMatch(/^Back squat, .*Whole set · Bar path · keep \+\.$/);
  });

  it('are counted over the whole sheet', () => {
    const two = sessionOf([
      draft({ flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] }),
      draft({ exercise: 'romanian-deadlift', flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] }),
    ]);
    const all = new Map([
      ['back-squat-0', 'a.jpg'],
      ['romanian-deadlift-0', 'b.jpg'],
    ]);
    const captions = writeSheet(two, gradeSession(two, catalogue), catalogue, { stills: all }).blocks.flatMap(
      (block) => (block.kind === 'picture' ? [block.caption.split('\u00A0· ')[0]] : []),
    );
    expect(captions).toEqual(['Still 1', 'Still 2']);
  });
});
