import { describe, expect, it } from 'vitest';
import { alignReviews } from '../../../engine/agreement/alignReviews.ts';
import { clip, entry, flag, review, ticks } from '../reviews.ts';

it('names entries, clips and what is said of them as the other review does, by their order', () => {
  const first = review(entry({ id: 'one', clips: [clip({ id: 'x' }), clip({ id: 'y' })] }));
  const second = review(
    entry({
      id: 'uno',
      clips: [clip({ id: 'p' }), clip({ id: 'q' })],
      flags: [flag({ criterion: 'depth', severity: 'adjust', clip: 'q' })],
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

describe('clips whose files are known', () => {
  const film = (id: string, digit: string) =>
    clip({
      id,
      facts: {
        sha256: digit.repeat(64),
        codec: 'h264',
        width: 640,
        height: 480,
        rotationDeg: 0,
        frames: 30,
        timeBase: { numerator: 1, denominator: 30 },
        durationUs: 1_000_000,
      },
    });
  const clipsOf = (...names: readonly (readonly [string, string])[]) =>
    entry({ id: `of ${names[0]?.[0]}`, clips: names.map(([id, digit]) => film(id, digit)) });

  it('go together by the file, whatever their order, also when one was taken away', () => {
    const first = review(clipsOf(['x', '1'], ['y', '2'], ['z', '3']));
    const second = review({
      ...clipsOf(['p', '3'], ['q', '2']),
      flags: [flag({ criterion: 'depth', severity: 'adjust', clip: 'p' })],
    });
    const [aligned] = alignReviews(second, first).entries;
    expect(aligned?.clips.map(({ id }) => id)).toEqual(['z', 'y']);
    expect(aligned?.flags.map((one) => one.clip)).toEqual(['z']);
  });

  it('are left out, with what was said of them, when the other review has other files', () => {
    const second = review({ ...clipsOf(['p', '9']), ticks: ticks('depth').map((tick) => ({ ...tick, clip: 'p' })) });
    expect(alignReviews(second, review(clipsOf(['x', '1']))).entries).toMatchObject([{ clips: [], ticks: [] }]);
  });

  it('tell which of two entries of one exercise goes with which', () => {
    const first = review(clipsOf(['x', '1']), clipsOf(['y', '2']));
    const second = review(clipsOf(['q', '2']), clipsOf(['p', '1']));
    expect(alignReviews(second, first).entries.map(({ id }) => id)).toEqual(['of y', 'of x']);
  });
});
