import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { type Language, localeOf } from '../language/language.ts';
import type { LoadUnits } from '../review/load.ts';
import type { Review } from '../review/review.ts';
import { type AlikeSets, type SetLoad, type Work, workOf } from '../review/work.ts';
import { sayerOf, workWording } from '../wording/wordings.ts';
import { inLanguage } from './inLanguage.ts';

/** Says work in one language and in the trainee's units. */
export type WorkSayer = {
  /** "3 sets × 8 reps × 60 kg", of a hold "3 sets × 30 s", or set by set: "4 sets planned, 1 filmed: 10 × 20 kg, 15 × 12 kg, 2 of 20 × body weight". */
  readonly work: (work: Work | null) => string;
  /** A load by itself: "60 kg", "body weight + 10 kg". */
  readonly load: (load: SetLoad) => string;
};

/** How a language says work. */
export function workSayer(language: Language, units: LoadUnits): WorkSayer {
  const say = sayerOf(workWording, language);
  const format = inLanguage(localeOf[language]);
  const load = (one: SetLoad): string => {
    switch (one.kind) {
      case 'bodyWeight':
        return say('bodyWeight');
      case 'held':
        return format.load(one.kg, units);
      default:
        return say(one.kind, { load: format.load(one.kg, units) });
    }
  };

  /** How long is held, and how often where a set has several holds. */
  const holds = ({ reps, holdS }: AlikeSets): string[] => [
    ...(holdS === null || reps === null ? [] : [say('holds', { count: reps })]),
    ...(holdS === null ? [] : [say('held', { seconds: holdS })]),
  ];

  /** One of several different sets: "10 × 20 kg", "2 of 20 × body weight", "2 of 30 s". */
  const run = (sets: AlikeSets): string => {
    const { count, reps, holdS, load: with_ } = sets;
    const own = holdS !== null ? holds(sets) : reps === null ? [] : [reps];
    if (own.length === 0 && with_ === null) return say('unknownSets', { count });
    const [only] = own;
    const set =
      with_ === null && typeof only === 'number'
        ? say('reps', { count: only })
        : [
            ...own.map((part) => (typeof part === 'number' ? format.whole(part) : part)),
            ...(with_ === null ? [] : [load(with_)]),
          ].join(' × ');
    if (count === 1) return set;
    return say(own.length === 0 ? 'runOfLoad' : 'runOfReps', { count, set });
  };

  /** Sets that are all alike: "3 sets × 8 reps × 60 kg". */
  const alike = (sets: number, each: AlikeSets): string =>
    [
      say('sets', { count: sets }),
      ...holds(each),
      ...(each.reps === null || each.holdS !== null ? [] : [say('reps', { count: each.reps })]),
      ...(each.load === null ? [] : [load(each.load)]),
    ].join(' × ');

  const counted = ({ counts }: Work, words: string): string => {
    if (counts.kind === 'all') return words;
    return say(counts.kind, { work: words, ...('count' in counts && { count: counts.count }) });
  };

  const work = (one: Work): string => {
    const [first, ...others] = one.runs;
    const sets = say('sets', { count: one.sets });
    if (first === undefined) return counted(one, sets);
    // What was done beyond the film is known by its number alone.
    if (others.length === 0 && one.counts.kind !== 'doneFilmed') return counted(one, alike(one.sets, first));
    const listed = one.runs.map(run).join(', ');
    return say('listed', { work: counted(one, sets), sets: listed });
  };

  return {
    load,
    work: (one) => {
      if (one === null) return say('notStated');
      const said = work(one);
      if (one.otherLoads.length === 0) return said;
      return say('otherLoads', { work: said, loads: format.list(one.otherLoads.map(load)) });
    },
  };
}

/** Says the work of a review's entries by their ids, in the units of its trainee; '' where nothing is known of it. */
export function workOfEntries(review: Review, catalogue: Catalogue, language: Language): (entryId: string) => string {
  const { work } = workSayer(language, review.trainee.units);
  const entries = new Map(review.entries.map((entry) => [entry.id, entry]));
  return (entryId) => {
    const entry = entries.get(entryId);
    const known = entry && workOf(entry, findExercise(catalogue, entry.exercise));
    return known ? work(known) : '';
  };
}
