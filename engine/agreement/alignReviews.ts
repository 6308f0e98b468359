import type { Clip, Entry, Review } from '../review/review.ts';

const sameId = (one: { readonly id: string }, other: { readonly id: string }): boolean => one.id === other.id;

const sameFile = (one: Clip, other: Clip): boolean =>
  one.facts?.sha256 !== undefined && one.facts.sha256 === other.facts?.sha256;

const sameSection = (one: Clip, other: Clip): boolean =>
  one.section?.from.frame === other.section?.from.frame && one.section?.to.frame === other.section?.to.frame;

/** Not known to be different files; then only their order tells them apart. */
const maybeSameFile = (one: Clip, other: Clip): boolean =>
  one.facts?.sha256 === undefined || other.facts?.sha256 === undefined;

const sameExercise = (one: Entry, other: Entry): boolean => one.exercise === other.exercise;

const sharesFile = (one: Entry, other: Entry): boolean =>
  one.clips.some((clip) => other.clips.some((another) => sameFile(clip, another)));

function renamed(entry: Entry, like: Entry): Entry {
  const pairs = pairUp(entry.clips, like.clips, [
    sameId,
    // Several sets may be parts of one file.
    (clip, other) => sameFile(clip, other) && sameSection(clip, other),
    sameFile,
    maybeSameFile,
  ]);
  const names = new Map([...pairs].map(([clip, other]) => [clip.id, other.id]));
  const named = <T extends { readonly clip: string }>(remark: T): T[] => {
    const name = names.get(remark.clip);
    return name === undefined ? [] : [{ ...remark, clip: name }];
  };
  return {
    ...entry,
    id: like.id,
    clips: entry.clips.flatMap((clip) => {
      const name = names.get(clip.id);
      return name === undefined ? [] : [{ ...clip, id: name }];
    }),
    flags: entry.flags.flatMap(named),
    ticks: entry.ticks.flatMap(named),
  };
}

/**
 * A review with the entries and clips named as in another review of the same footage, so that the two can be compared:
 * those of the same name go together, then those that show the same file, then those of the same exercise in their order.
 * What the other review does not hold is left out, and so is a clip that is known to be another file.
 */
export function alignReviews(review: Review, like: Review): Review {
  const pairs = pairUp(review.entries, like.entries, [
    sameId,
    (one, other) => sameExercise(one, other) && sharesFile(one, other),
    sameExercise,
  ]);
  return {
    ...review,
    entries: review.entries.flatMap((entry) => {
      const other = pairs.get(entry);
      return other === undefined ? [] : [renamed(entry, other)];
    }),
  };
}

/**
 * Pairs the items of two lists, each at most once. The rules are tried one after another over the whole list, so that what
 * an early rule knows for sure is not taken away by a later guess; within a rule, the order of the lists decides.
 */
function pairUp<T>(
  items: readonly T[],
  others: readonly T[],
  rules: readonly ((item: T, other: T) => boolean)[],
): ReadonlyMap<T, T> {
  const pairs = new Map<T, T>();
  const taken = new Set<T>();
  for (const rule of rules) {
    for (const item of items) {
      if (pairs.has(item)) continue;
      const other = others.find((one) => !taken.has(one) && rule(item, one));
      if (other === undefined) continue;
      pairs.set(item, other);
      taken.add(other);
    }
  }
  return pairs;
}
