import path from 'node:path';
import { expect, it } from 'vitest';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { compareReviews } from '../../../engine/agreement/compareReviews.ts';
import { clip, entry, reps, review } from '../reviews.ts';

it('counts a moment that both looked at, rep by rep, and no rep that one of them did not open', () => {
  const catalogue = loadCatalogue(path.resolve(import.meta.dirname, '../../..'), 3);
  const ticked = (which: 'set' | number[]) =>
    review(
      entry({
        exercise: 'back-squat',
        clips: [clip({ reps: reps(5) })],
        ticks: [{ clip: 'a', criterion: 'depth', reps: which }],
      }),
    );
  const { overall, onlyFirst, onlySecond } = compareReviews(ticked('set'), ticked([1, 2]), catalogue);
  expect([overall.moments, onlyFirst, onlySecond]).toEqual([2, 3, 0]);
});
