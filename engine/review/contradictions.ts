import type { Catalogue } from '../exercises/catalogue.ts';
import type { Exercise } from '../exercises/exercise.ts';
import { isDay } from '../time/day.ts';
import {
  drawingTroubles,
  flagTroubles,
  framingTroubles,
  type JudgementSite,
  momentTrouble,
  repTroubles,
  tickTroubles,
} from './entryTroubles.ts';
import type { Clip, EntryAsRead, Review, ReviewAsRead } from './review.ts';
import { quote, type Trouble } from './trouble.ts';

/** "1, 2 and 3" */
const listed = (versions: readonly number[]): string => versions.join(', ').replace(/, (\d+)$/, ' and $1');

function* sessionTroubles(review: ReviewAsRead, catalogue: Catalogue, versions: readonly number[]): Generator<Trouble> {
  const { rubric } = review;
  if (rubric !== undefined && (rubric.id !== catalogue.rubric.id || rubric.version !== catalogue.rubric.version)) {
    const own = `${quote(catalogue.rubric.id)} version${versions.length > 1 ? 's' : ''} ${listed(versions)}`;
    const are = versions.length > 1 ? 'are' : 'is';
    yield {
      path: 'rubric',
      what: `asks for ${quote(rubric.id)} version ${rubric.version}, but only ${own} ${are} here`,
    };
  }
  if (!isDay(review.session.date)) {
    yield { path: 'session.date', what: `is ${quote(review.session.date)}, a day that no calendar has: correct it` };
  }
}

/** Second uses of an id, over the whole review: letters and sheets name clips and flags by id alone. */
function* idTroubles(review: ReviewAsRead): Generator<Trouble> {
  const seen = {
    entry: new Set<string>(),
    clip: new Set<string>(),
    flag: new Set<string>(),
    drawing: new Set<string>(),
  };
  const again = (kind: keyof typeof seen, id: string | undefined, path: string): Trouble | null => {
    if (id === undefined) return null;
    if (seen[kind].has(id))
      return { path, what: `has the id ${quote(id)}, which another ${kind} has: give it its own` };
    seen[kind].add(id);
    return null;
  };
  for (const [i, entry] of review.entries.entries()) {
    const found = [
      again('entry', entry.id, `entries[${i}]`),
      ...entry.clips.map((clip, j) => again('clip', clip.id, `entries[${i}].clips[${j}]`)),
      ...entry.clips.flatMap((clip, j) =>
        (clip.drawings ?? []).map(({ id }, k) => again('drawing', id, `entries[${i}].clips[${j}].drawings[${k}]`)),
      ),
      ...entry.flags.map((flag, j) => again('flag', flag.id, `entries[${i}].flags[${j}]`)),
    ];
    yield* found.filter((trouble) => trouble !== null);
  }
}

function* clipTroubles(clip: Clip, path: string): Generator<Trouble> {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: control characters are what is looked for.
  if (clip.path !== undefined && /[\u0000-\u001f]/.test(clip.path)) {
    yield { path: `${path}.path`, what: 'has a control character: write the path plainly' };
  }
  yield* repTroubles(clip, path);
  yield* drawingTroubles(clip, path);
  yield* framingTroubles(clip, path);
}

/** A clip that shows another's set: that clip is in the entry, shows its own set, and has as many reps. */
function* cameraTroubles({ clips }: EntryAsRead, path: string): Generator<Trouble> {
  for (const [i, { id, sameSet, reps }] of clips.entries()) {
    if (sameSet === undefined) continue;
    const at = `${path}.clips[${i}].sameSet`;
    const lead = clips.find((clip) => clip.id === sameSet.clip);
    if (lead === undefined || lead.id === id || lead.sameSet !== undefined) {
      yield {
        path: at,
        what: `names ${quote(sameSet.clip)}, which is no other clip of the entry with a set of its own`,
      };
    } else if (lead.reps.length !== reps.length) {
      yield {
        path: at,
        what: `shows ${reps.length} reps of a set that has ${lead.reps.length}: mark the same reps in both`,
      };
    }
  }
}

function* entryTroubles(
  entry: EntryAsRead,
  path: string,
  exercise: Exercise,
  catalogue: Catalogue,
): Generator<Trouble> {
  for (const [i, clip] of entry.clips.entries()) yield* clipTroubles(clip, `${path}.clips[${i}]`);
  yield* cameraTroubles(entry, path);
  const clips = new Map(entry.clips.map((clip) => [clip.id, clip]));
  for (const [i, flag] of entry.flags.entries()) {
    const at: JudgementSite = { path: `${path}.flags[${i}]`, exercise, rubric: catalogue.rubric, clips };
    yield* flagTroubles(flag, at);
    const clip = clips.get(flag.clip);
    const trouble = clip === undefined ? null : momentTrouble(flag.at, clip, at.path);
    if (trouble !== null) yield trouble;
  }
  for (const [i, tick] of entry.ticks.entries()) {
    yield* tickTroubles(tick, { path: `${path}.ticks[${i}]`, exercise, rubric: catalogue.rubric, clips });
  }
}

/** What in a review of the right shape contradicts itself, the rubric or the exercise library, in reading order. */
export function* findContradictions(
  review: ReviewAsRead,
  catalogue: Catalogue,
  versions: readonly number[],
): Generator<Trouble> {
  yield* sessionTroubles(review, catalogue, versions);
  yield* idTroubles(review);
  const exercises = new Map(catalogue.exercises.map((exercise) => [exercise.id, exercise]));
  for (const [i, entry] of review.entries.entries()) {
    const exercise = exercises.get(entry.exercise);
    if (exercise === undefined) {
      yield {
        path: `entries[${i}]`,
        what: `names the exercise ${quote(entry.exercise)}, which the library doesn't hold: correct it or add it there`,
      };
      continue;
    }
    yield* entryTroubles(entry, `entries[${i}]`, exercise, catalogue);
  }
}

/** Gives flags without an id "flag-1", "flag-2", ... in reading order, skipping ids that are taken. */
export function nameFlags(review: ReviewAsRead): Review {
  const taken = new Set(review.entries.flatMap((entry) => entry.flags.flatMap((flag) => flag.id ?? [])));
  let next = 1;
  const freeId = (): string => {
    while (taken.has(`flag-${next}`)) next += 1;
    return `flag-${next++}`;
  };
  const entries = review.entries.map((entry) => ({
    ...entry,
    flags: entry.flags.map((flag) => ({ ...flag, id: flag.id ?? freeId() })),
  }));
  return { ...review, entries };
}
