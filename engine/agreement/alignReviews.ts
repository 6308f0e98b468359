import type { Clip, Entry, Review } from '../review/review.ts';
import { pairUp } from './pairUp.ts';

const sameId = (one: { readonly id: string }, other: { readonly id: string }): boolean => one.id === other.id;

const sameFile = (one: Clip, other: Clip): boolean =>
  one.facts?.sha256 !== undefined && one.facts.sha256 === other.facts?.sha256;

/** Not known to be another file; then the order is all there is to go by. */
const maybeSameFile = (one: Clip, other: Clip): boolean =>
  one.facts?.sha256 === undefined || other.facts?.sha256 === undefined;

const sameExercise = (one: Entry, other: Entry): boolean => one.exercise === other.exercise;

const sharesFile = (one: Entry, other: Entry): boolean =>
  one.clips.some((clip) => other.clips.some((another) => sameFile(clip, another)));

function renamed(entry: Entry, like: Entry): Entry {
  const pairs = pairUp(entry.clips, like.clips, [sameId, sameFile, maybeSameFile]);
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
