import { expect, it } from 'vitest';
import { alignReviews } from '../../../engine/agreement/index.ts';
import { clip, entry, flag, review, ticks } from '../reviews.ts';

it('names entries, clips and what is said of them as the other review does, by their order', () => {
  const first = review(entry({ id: 'one', clips: [clip({ id: 'x' }), clip({ id: 'y' })] }));
  const second = review(
    entry({
      id: 'uno',
      clips: [clip({ id: 'p' }), clip({ id: 'q' })],
      flags: [flag({ criterion: 'depth', weight: 'adjust', clip: 'q' })],
      ticks: ticks('pauses').map((tick) => ({ ...tick, clip: 'p' })),
    }),
  );
  const [aligned] = alignReviews(second, first).entries;
  expect(aligned?.id).toBe('one');
  expect(aligned?.clips.map(({ id }) => id)).toEqual(['x', 'y']);
  expect(aligned?.flags[0]?.clip).toBe('y');
  expect(aligned?.ticks[0]?.clip).toBe('x');
});

it('goes by the exercise, and leaves out one that the other does not hold', () => {
  const first = review(entry({ id: 'a', exercise: 'hinge' }), entry({ id: 'b', exercise: 'squat' }));
  const second = review(entry({ id: 'c', exercise: 'squat' }), entry({ id: 'd', exercise: 'press' }));
  expect(alignReviews(second, first).entries.map(({ id }) => id)).toEqual(['b']);
});
