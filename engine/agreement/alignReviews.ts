import type { Entry, Review } from '../review/index.ts';

const renamed = (entry: Entry, like: Entry): Entry => {
  const names = new Map(entry.clips.map((clip, place) => [clip.id, like.clips[place]?.id ?? clip.id]));
  const named = <T extends { readonly clip: string }>(remark: T): T => ({
    ...remark,
    clip: names.get(remark.clip) ?? remark.clip,
  });
  return {
    ...entry,
    id: like.id,
    clips: entry.clips.map((clip) => ({ ...clip, id: names.get(clip.id) ?? clip.id })),
    flags: entry.flags.map(named),
    ticks: entry.ticks.map(named),
  };
};

/**
 * A review with the entries and clips named as in another review of the same footage, so that the two can be compared:
 * the first entry of an exercise goes with the first of that exercise there, and its clips in their order. What the other
 * review does not hold is left out.
 */
export function alignReviews(review: Review, like: Review): Review {
  const taken = new Set<string>();
  const entries = review.entries.flatMap((entry) => {
    const other = like.entries.find((one) => one.exercise === entry.exercise && !taken.has(one.id));
    if (other === undefined) return [];
    taken.add(other.id);
    return [renamed(entry, other)];
  });
  return { ...review, entries };
}
