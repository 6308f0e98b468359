import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { CriterionScore, SessionGrade } from '../grading/grade.ts';
import { setsOf } from '../review/camerasOfSet.ts';
import { unitNames, unitsSpokenOf } from '../review/lookedAt.ts';
import type { Entry, Review } from '../review/review.ts';
import type { CriterionId } from '../rubric/rubric.ts';
import { criterionName, exerciseName, type JudgingRow } from '../sheet/flagRows.ts';
import type { Keep, Sighting } from './letterPlan.ts';
import { loweringSeen } from './lowering.ts';
import { nearlySame } from './nearlySame.ts';
import { isHold, ofEntry, sightingsOf } from './sightings.ts';

const most = 3;
const fewest = 2;
/** In the rubric's words praise sounds alike: fewer of these. */
const mostAnchors = 2;

/** The criterion whose praise can be told by the time of the way down. */
const timed = 'eccentricTempo';

/** The criterion that means nothing to praise in a hold, which is one pause. */
const stillness = 'pauses';

type Basis = { readonly review: Review; readonly grade: SessionGrade; readonly catalogue: Catalogue };

/** What praise of a criterion looks like on film, in the rubric's words; '' where it has none. */
const anchorOf = (catalogue: Catalogue, id: CriterionId): string =>
  catalogue.rubric.criteria.find((criterion) => criterion.id === id)?.anchors.keep ?? '';

/** Something good of one criterion in one entry: the coach's words, else a time, else what the rubric says it looks like. */
function keepOf(
  entry: Entry,
  criterion: CriterionId,
  { words, of = null, sightings }: { words: string; of?: Sighting | null | undefined; sightings: readonly Sighting[] },
  { review, catalogue }: Basis,
): Keep[] {
  const named = { key: `${criterion}-${entry.id}`, criterion: criterionName(catalogue, criterion, entry.exercise) };
  const lowering = words === '' && criterion === timed ? loweringSeen(entry, review, catalogue) : null;
  if (lowering !== null) return [{ ...named, sightings: [lowering.sighting], seen: lowering.seen }];
  if (words !== '') return [{ ...named, sightings, seen: { kind: 'words', what: words, of } }];
  if (isHold(entry, catalogue)) {
    return criterion === stillness ? [] : [{ ...named, sightings, seen: { kind: 'held' } }];
  }
  const what = anchorOf(catalogue, criterion);
  return what === '' ? [] : [{ ...named, sightings, seen: { kind: 'anchor', what } }];
}

const shareOf = (catalogue: Catalogue, entry: Entry, id: CriterionId): number =>
  findExercise(catalogue, entry.exercise)?.criteria.find((each) => each.id === id)?.share ?? 0;

/** Praise of an exercise, the criterion that weighs most first; different words of the coach each for themselves. */
function praised(entry: Entry, rows: readonly JudgingRow[], basis: Basis): Keep[] {
  const groups = [...Map.groupBy(rows, (row) => row.criterion)].sort(
    ([a], [b]) => shareOf(basis.catalogue, entry, b) - shareOf(basis.catalogue, entry, a),
  );
  return groups.flatMap(([criterion, own]): Keep[] => {
    const said = own.filter((row) => tidy(row.note) !== '').slice(0, 1);
    const words = tidy(said[0]?.note ?? '');
    const alike = own.filter(
      (row) => row.note === '' || words === '' || nearlySame(row.note, words) || tidy(row.note) === words,
    );
    const [of] = sightingsOf(said, entry, basis.catalogue);
    return keepOf(entry, criterion, { words, of, sightings: sightingsOf(alike, entry, basis.catalogue) }, basis);
  });
}

/** Every rep of the entry carries a tick on the criterion. */
function tickedThroughout(entry: Entry, criterion: CriterionId): boolean {
  const ticked = new Set(
    entry.ticks.filter((tick) => tick.criterion === criterion).flatMap((tick) => unitsSpokenOf(entry, tick)),
  );
  const all = unitNames(entry);
  return all.length > 0 && all.every((unit) => ticked.has(unit));
}

const costsNothing = (score: CriterionScore): boolean =>
  score.lookedAt && score.score === 100 && score.reps.every((rep) => rep.flags.length === 0);

/** Whether a criterion is part of another one, or that one of it, by the rubric. */
function belongTogether(one: CriterionId, other: CriterionId, { rubric }: Catalogue): boolean {
  const parentOf = (id: CriterionId) => rubric.criteria.find((criterion) => criterion.id === id)?.partOf;
  return parentOf(one) === other || parentOf(other) === one;
}

/** A range that stops short at one end is not praised for the other: what belongs to a criterion was found wanting. */
const isMarred = (criterion: CriterionId, entry: Entry, catalogue: Catalogue): boolean =>
  entry.flags.some(
    (flag) =>
      flag.severity !== 'keep' && flag.severity !== 'prefer' && belongTogether(flag.criterion, criterion, catalogue),
  );

/** Where a tick on every rep was seen: the whole of each set, whichever cameras filmed it. */
const throughout = (entry: Entry, catalogue: Catalogue): Sighting[] =>
  setsOf(entry.clips).map(({ lead: clip }, _, sets) => ({
    exercise: exerciseName(catalogue, entry.exercise),
    clip: clip.id,
    clipName: sets.length > 1 ? clip.name : null,
    reps: clip.reps.length === 0 ? { kind: 'set' } : { kind: 'every', of: clip.reps.length },
    ...ofEntry(entry, catalogue),
    momentsUs: [],
  }));

/** The criteria of one exercise that were found fine on every rep; what can be told by a time first, then what weighs most. */
function fine(entry: Entry, basis: Basis): Keep[] {
  // A hold with a fault did not stay as it began.
  if (isHold(entry, basis.catalogue) && entry.flags.some(({ severity }) => severity !== 'keep')) return [];
  const scores = basis.grade.entries.find((each) => each.entryId === entry.id)?.criteria ?? [];
  const keeps = scores
    .filter((score) => costsNothing(score) && tickedThroughout(entry, score.criterion))
    .filter(({ criterion }) => !isMarred(criterion, entry, basis.catalogue))
    .sort((a, b) => b.share - a.share)
    .flatMap(({ criterion }) =>
      keepOf(entry, criterion, { words: '', sightings: throughout(entry, basis.catalogue) }, basis),
    );
  return [
    ...keeps.filter(({ seen }) => seen.kind === 'lowering'),
    ...keeps.filter(({ seen }) => seen.kind !== 'lowering'),
  ];
}

/** Takes the first of each list, then the second of each, and so on. */
function inTurn<T>(lists: readonly (readonly T[])[]): T[] {
  const longest = Math.max(0, ...lists.map((list) => list.length));
  return Array.from({ length: longest }, (_, index) => lists.flatMap((list) => list.slice(index, index + 1))).flat();
}

/** What praise says, without its places; ways down that took their time are one thing. */
const sayingOf = ({ seen, criterion }: Keep): string =>
  seen.kind === 'words' || seen.kind === 'anchor' ? seen.what : `${seen.kind} ${criterion}`;

/** One way down for several lifts: those whose last rep still took its time where there are some, by the shortest of them. */
function sharedLowering(keeps: readonly Keep[]): Keep[] {
  const timed = keeps.flatMap((keep) => (keep.seen.kind === 'lowering' ? [{ keep, seen: keep.seen }] : []));
  const still = timed.filter(({ seen }) => seen.still);
  const told = still.length > 0 ? still : timed;
  const [first] = told;
  if (first === undefined) return [];
  const all = told.map(({ seen }) => seen.seconds);
  const seconds = Math.min(...all);
  return [
    {
      ...first.keep,
      sightings: told.flatMap(({ keep }) => keep.sightings),
      seen: { ...first.seen, seconds, orMore: Math.max(...all) > seconds },
    },
  ];
}

/** The name of what several lifts share: that of the lifts to which the rubric's own does not apply, "range" for "depth". */
const sharedName = (keeps: readonly Keep[], { rubric }: Catalogue): string | undefined =>
  (keeps.find(({ criterion }) => rubric.criteria.every(({ name }) => name !== criterion)) ?? keeps[0])?.criterion;

/** Places in the order of the session. */
function inOrder(sightings: readonly Sighting[], { entries }: Review): Sighting[] {
  const rank = (sighting: Sighting): number => entries.findIndex(({ id }) => id === sighting.entry.id);
  return [...sightings].sort((a, b) => rank(a) - rank(b));
}

/** Praise in the same words is said once, with all its places. */
function eachOnce(keeps: readonly Keep[], { review, catalogue }: Basis): Keep[] {
  return [...Map.groupBy(keeps, sayingOf).values()].flatMap((alike): Keep[] => {
    const [first] = alike;
    if (first?.seen.kind === 'lowering') return sharedLowering(alike);
    const criterion = sharedName(alike, catalogue);
    return first === undefined || criterion === undefined
      ? []
      : [
          {
            ...first,
            criterion,
            sightings: inOrder(
              alike.flatMap(({ sightings }) => sightings),
              review,
            ),
          },
        ];
  });
}

/** A hold that kept its shape is praised for it once, under the criterion that comes first. */
const isHeldAgain = (keep: Keep, at: number, all: readonly Keep[]): boolean =>
  keep.seen.kind === 'held' &&
  keep.sightings.every(({ exercise }) =>
    all
      .slice(0, at)
      .some(({ seen, sightings }) => seen.kind === 'held' && sightings.some((one) => one.exercise === exercise)),
  );

/** Two or three true and specific things to keep: the coach's praise first, spread over the exercises. */
export function planKeeps(
  review: Review,
  grade: SessionGrade,
  catalogue: Catalogue,
  rows: readonly JudgingRow[],
): Keep[] {
  const basis = { review, grade, catalogue };
  const praise = review.entries.map((entry) =>
    praised(
      entry,
      rows.filter((row) => row.entryId === entry.id && row.severity === 'keep'),
      basis,
    ),
  );
  const told = new Set(praise.flat().map(({ key }) => key));
  const rest = review.entries.map((entry) => fine(entry, basis).filter(({ key }) => !told.has(key)));
  const once = eachOnce([...inTurn(praise), ...inTurn(rest)], basis).filter((...one) => !isHeldAgain(...one));
  const lowering = once.find(({ seen }) => seen.kind === 'lowering');
  // What its time has told of some lifts is not told of others in the rubric's words.
  const keeps = once.filter(({ seen, criterion }) => seen.kind !== 'anchor' || criterion !== lowering?.criterion);
  const isPlain = ({ seen }: Keep): boolean => seen.kind === 'anchor' || seen.kind === 'held';
  const anchors = keeps.filter(isPlain).slice(0, mostAnchors);
  const worth = keeps.filter((keep) => !isPlain(keep) || anchors.includes(keep));
  // What the coach praised in words is not praised again under the same name, unless there is nothing else.
  const isAgain = ({ seen, criterion }: Keep, at: number): boolean =>
    seen.kind !== 'words' && worth.slice(0, at).some((before) => before.criterion === criterion);
  const again = worth.filter(isAgain);
  const fresh = worth.filter((keep) => !again.includes(keep));
  return [...fresh, ...again.slice(0, Math.max(0, fewest - fresh.length))].slice(0, most);
}
