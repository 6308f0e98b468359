import { catalogueOf, exercise } from '../catalogue.ts';

export const catalogue = catalogueOf(
  exercise(),
  exercise({ id: 'tempo-only', criteria: [{ id: 'eccentricTempo', share: 1 }] }),
);

const facts = {
  codec: 'h264',
  width: 1280,
  height: 720,
  rotationDeg: 0,
  frames: 300,
  timeBase: { numerator: 1, denominator: 15_360 },
  durationUs: 10_000_000,
};

/** A review as a person would write it by hand: only what is needed, in reading order. */
export const handWritten = () => ({
  format: 'rackside-review',
  version: 4,
  trainee: { name: '  Robin Vale ' },
  session: { date: '2025-03-09' },
  entries: [
    {
      id: 'e1',
      exercise: 'squat',
      plan: { sets: 3, reps: 5, tempo: '3-1-X-0' },
      clips: [
        {
          id: 'a',
          name: 'Set 1',
          view: 'side',
          facts,
          reps: [1, 2, 3, 4, 5].map((index) => ({
            index,
            start: { frame: 50 * index - 40, ticks: 512 * (50 * index - 40) },
            stretchedEnd: { frame: 50 * index - 20, ticks: 512 * (50 * index - 20) },
            end: { frame: 50 * index, ticks: 512 * 50 * index },
          })),
        },
        { id: 'b', name: 'Set 2' },
      ],
      flags: [
        {
          clip: 'a',
          criterion: 'depth',
          fault: 'shortOfDepth',
          severity: 'adjust',
          reps: [3, 1, 3],
          at: { frame: 30, ticks: 15_360 },
        },
        { id: 'flag-1', clip: 'b', criterion: 'depth', severity: 'keep', reps: 'set', at: { seconds: 4.5 } },
        {
          clip: 'a',
          criterion: 'headPosition',
          severity: 'prefer',
          reps: 'set',
          at: { seconds: 2 },
          note: 'Looks up.',
        },
      ],
      ticks: [{ clip: 'a', criterion: 'barPath', reps: [2, 1] }],
    },
    { id: 'e2', exercise: 'tempo-only', clips: [] },
  ],
});

// biome-ignore lint/suspicious/noExplicitAny: tests spoil the sample in ways that no type allows.
export type Loose = any;

/** The sample, spoilt. */
export const spoilt = (spoil: (review: Loose) => void): unknown => {
  const review = structuredClone(handWritten());
  spoil(review);
  return review;
};
