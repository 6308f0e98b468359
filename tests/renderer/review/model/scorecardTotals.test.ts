import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Entry } from '../../../../engine/review/review.ts';
import { scorecardModel } from '../../../../renderer/review/model/scorecardModel.ts';
import { catalogue, entries } from '../../../engine/grading/arbitraries.ts';
import { gradeEntry } from '../../../engine/grading/gradeEntry.ts';

const cardOf = (entry: Entry) => {
  const grade = gradeEntry(entry, catalogue);
  return { grade, card: scorecardModel(entry, grade, catalogue.rubric.criteria) };
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
        const product = [...cell.flags, ...cell.fromSet].reduce((rest, flag) => rest * left[flag.weight], 100);
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
