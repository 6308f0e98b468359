import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Entry } from '../../../../engine/review/review.ts';
import { type Cell, scorecardModel } from '../../../../renderer/review/model/scorecardModel.ts';
import { shippedRubric } from '../../../engine/catalogue.ts';
import { catalogue, entries } from '../../../engine/grading/arbitraries.ts';
import { gradeEntry } from '../../../engine/grading/gradeEntry.ts';
import { clip, entry, flag, reps, ticks } from '../../../engine/reviews.ts';

const card = (of: Entry) => scorecardModel(of, gradeEntry(of, catalogue), catalogue);

function cellAt(of: Entry, criterion: string, rep: number | 'set'): Cell {
  const row = card(of).rows.find((known) => known.criterion === criterion);
  const cell = row?.cells.find((known) => known.column.rep === rep);
  if (cell === undefined) throw new Error(`no cell ${criterion} ${rep}`);
  return cell;
}

it('has a column for the whole set and one for each rep, clip by clip', () => {
  const two = entry({ clips: [clip({ reps: reps(2) }), clip({ id: 'b', reps: [] })] });
  expect(card(two).columns.map(({ column, label }) => `${column.clipId} ${label}`)).toEqual([
    'a Set',
    'a 1',
    'a 2',
    'b Set',
  ]);
});

it('tells a flag of the rep from one of the whole set', () => {
  const flagged = entry({
    flags: [
      flag({ id: 'own', criterion: 'depth', severity: 'correct', reps: [2] }),
      flag({ id: 'all', criterion: 'depth', severity: 'prefer' }),
    ],
  });
  const second = cellAt(flagged, 'depth', 2);
  expect(second.flags.map((known) => known.id)).toEqual(['own']);
  expect(second.fromSet.map((known) => known.id)).toEqual(['all']);
  // 100 × 0.40 × 0.92
  expect(second.score).toBeCloseTo(36.8, 9);
  expect(cellAt(flagged, 'depth', 'set').flags.map((known) => known.id)).toEqual(['all']);
});

it('shows a tick on the whole set in the set’s column, and as covering the reps', () => {
  const ticked = entry({ ticks: ticks('pauses') });
  expect(cellAt(ticked, 'pauses', 'set')).toMatchObject({ ticked: true, tickedBySet: false });
  expect(cellAt(ticked, 'pauses', 3)).toMatchObject({ ticked: false, tickedBySet: true, score: 100 });
});

it('shows nothing, not a full score, where nobody has looked', () => {
  expect(cellAt(entry(), 'depth', 1)).toMatchObject({ flags: [], fromSet: [], ticked: false, score: null });
  expect(card(entry()).columns.every(({ total }) => total === null)).toBe(true);
});

it('judges a clip without marked reps in its set’s column', () => {
  const unmarked = entry({
    clips: [clip({ reps: [] })],
    flags: [flag({ criterion: 'depth', severity: 'adjust' })],
  });
  expect(cellAt(unmarked, 'depth', 'set').score).toBe(80);
  expect(card(unmarked).columns.map(({ total }) => total)).toEqual([80]);
});

it('leaves untouched cells of version 3 empty, and totals over those that were looked at', () => {
  const cells = { ...catalogue, rubric: shippedRubric(3) };
  const judged = entry({
    clips: [clip({ reps: reps(3) })],
    flags: [flag({ criterion: 'depth', severity: 'adjust', reps: [2] })],
    ticks: [{ clip: 'a', criterion: 'depth', reps: [1] }],
  });
  const model = scorecardModel(judged, gradeEntry(judged, cells), cells);
  const depth = model.rows.find(({ criterion }) => criterion === 'depth');
  // Set, reps 1 to 3; the row's end is (100 + 80) / 2.
  expect(depth?.cells.map(({ score }) => score)).toEqual([null, 100, 80, null]);
  expect(depth?.score).toBe(90);
  expect(model.columns.map(({ total }) => total)).toEqual([null, 100, 80, null]);
});

const cardOf = (entry: Entry) => {
  const grade = gradeEntry(entry, catalogue);
  return { grade, card: scorecardModel(entry, grade, catalogue) };
};

/** Rubric version 1, by hand. */
const left = { keep: 1, prefer: 0.92, adjust: 0.8, correct: 0.4, stop: 0 };

it('shows the grade’s own score at the end of every row', () => {
  fc.assert(
    fc.property(entries, (entry) => {
      const { grade, card } = cardOf(entry);
      expect(card.rows.map((row) => [row.criterion, row.score])).toEqual(
        grade.criteria.map((scored) => [scored.criterion, scored.score]),
      );
      expect(card.weightedMean).toBe(grade.weightedMean);
    }),
  );
});

it('has column totals whose mean over the reps is the weighted mean', () => {
  fc.assert(
    fc.property(entries, (entry) => {
      const { grade, card } = cardOf(entry);
      const totals = card.columns.flatMap(({ total }) => (total === null ? [] : [total]));
      fc.pre(grade.weightedMean !== null);
      const mean = totals.reduce((sum, total) => sum + total, 0) / totals.length;
      expect(mean).toBeCloseTo(grade.weightedMean ?? Number.NaN, 6);
    }),
  );
});

it('shows in each cell what is left of the rep after the strokes that stand in it', () => {
  fc.assert(
    fc.property(entries, (entry) => {
      for (const cell of cardOf(entry).card.rows.flatMap((row) => row.cells)) {
        if (cell.score === null) continue;
        const product = [...cell.flags, ...cell.fromSet].reduce(
          (rest, flag) => (flag.severity === null ? rest : rest * left[flag.severity]),
          100,
        );
        expect(cell.score).toBeCloseTo(product, 6);
      }
    }),
  );
});

it('loses no flag and no tick: each stands in the columns it speaks of', () => {
  fc.assert(
    fc.property(entries, (entry) => {
      const cells = cardOf(entry).card.rows.flatMap((row) => row.cells);
      for (const flag of entry.flags) {
        const columns = cells.filter((cell) => cell.flags.includes(flag)).map((cell) => cell.column.rep);
        expect(columns).toEqual(flag.reps === 'set' ? ['set'] : [...flag.reps].sort((a, b) => a - b));
      }
      for (const tick of entry.ticks) {
        const ofTick = cells.filter((cell) => cell.criterion === tick.criterion && cell.column.clipId === tick.clip);
        for (const rep of tick.reps === 'set' ? ['set'] : tick.reps) {
          expect(ofTick.find((cell) => cell.column.rep === rep)?.ticked).toBe(true);
        }
      }
    }),
  );
});
