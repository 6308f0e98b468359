import type { SetMeasurement } from '../motion/measurement.ts';
import type { Clip, ClipFacts, Review } from '../review/review.ts';

/** What opening the clips of a session has told, by the clip's id. */
export type Footage = {
  readonly facts: ReadonlyMap<string, ClipFacts>;
  readonly measures: ReadonlyMap<string, SetMeasurement>;
};

/** The review with facts of its files where it has none; the same object where it has them all. */
export function withFacts(review: Review, facts: Footage['facts']): Review {
  const isMissing = (clip: Clip) => clip.facts === undefined && facts.has(clip.id);
  if (!review.entries.some(({ clips }) => clips.some(isMissing))) return review;
  return {
    ...review,
    entries: review.entries.map((entry) => ({
      ...entry,
      clips: entry.clips.map((clip) => {
        const known = clip.facts ?? facts.get(clip.id);
        return known === undefined ? clip : { ...clip, facts: known };
      }),
    })),
  };
}
