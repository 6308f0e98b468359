import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { parseTempo } from '../time/tempo.ts';
import type { PlannedEntry, ProgrammeFinding } from './finding.ts';

/**
 * For growth: what keeps a muscle from being loaded where it is long. Load that is hardest at the short end, pauses and
 * holds only there, a range that is cut by the set-up, several exercises that all leave the long end out.
 */
export function longEndFindings(entries: readonly PlannedEntry[], catalogue: Catalogue): ProgrammeFinding[] {
  const firstOfEach = entries.filter((one, i) => entries.findIndex((other) => other.exercise === one.exercise) === i);
  const present = new Set(entries.map(({ exercise }) => exercise.id));
  const muscles = [...new Set(entries.flatMap(({ exercise }) => exercise.muscles.direct))];
  return [
    ...firstOfEach.flatMap((planned) => hardestShort(planned, present, catalogue)),
    ...entries.flatMap(pausedShort),
    ...muscles.flatMap((muscle) => shortHolds(muscle, entries)),
    ...firstOfEach.flatMap((planned) => curtailed(planned, present, catalogue)),
    ...muscles.flatMap((muscle) => unbalanced(muscle, entries)),
  ];
}

/** Hardest at the short end, with no better-suited exercise beside it. */
function hardestShort(
  { entry, exercise }: PlannedEntry,
  present: ReadonlySet<string>,
  catalogue: Catalogue,
): ProgrammeFinding[] {
  const variants = exercise.ladder.betterSuited.map((variant) => variant.exercise);
  if (exercise.hardestAt !== 'short' || variants.some((id) => present.has(id))) return [];
  const [better, ...others] = variants.flatMap((id) => findExercise(catalogue, id)?.name ?? []);
  if (better === undefined) return [];
  return [
    {
      id: `short-end-load-${entry.id}`,
      kind: 'short-end-load',
      weight: 'prefer',
      entryIds: [entry.id],
      message: { id: 'shortEndLoad', values: { exercise: exercise.name, better, others, count: others.length } },
    },
  ];
}

/** A pause at the short end and none at the long one, where the targets ask for a long pause. */
function pausedShort({ entry, exercise, plan }: PlannedEntry): ProgrammeFinding[] {
  const tempo = plan?.tempo === undefined ? null : parseTempo(plan.tempo);
  if (tempo === null || tempo.shortPauseS === 0 || tempo.longPauseS > 0 || exercise.hardestAt === 'short') return [];
  if (exercise.targets.tempo.growth.longPauseS[1] === 0) return [];
  return [
    {
      id: `short-end-pause-${entry.id}`,
      kind: 'short-end-pause',
      weight: 'prefer',
      entryIds: [entry.id],
      message: {
        id: 'shortEndPause',
        values: { exercise: exercise.name, shortEnd: exercise.shortEnd, longEnd: exercise.longEnd },
      },
    },
  ];
}

/** A pause of this long or longer at one end is a hold, not a turn. */
const holdS = 2;

/**
 * A muscle with two planned exercises or more whose only holds, over all of them, are at the short end. One exercise
 * alone is the business of its own tempo.
 */
function shortHolds(muscle: string, entries: readonly PlannedEntry[]): ProgrammeFinding[] {
  const own = entries.flatMap((planned) => {
    const tempo = planned.plan?.tempo === undefined ? null : parseTempo(planned.plan.tempo);
    return tempo !== null && planned.exercise.muscles.direct.includes(muscle) ? [{ planned, tempo }] : [];
  });
  const holding = own.filter(({ tempo }) => tempo.shortPauseS >= holdS);
  if (holding.length < 2 || own.some(({ tempo }) => tempo.longPauseS > 0)) return [];
  return [
    {
      id: `short-holds-${muscle.replaceAll(' ', '-')}`,
      kind: 'short-holds',
      weight: 'prefer',
      entryIds: holding.map(({ planned }) => planned.entry.id),
      message: { id: 'shortHolds', values: { muscle, exercises: holding.map(({ planned }) => planned.exercise.name) } },
    },
  ];
}

/** A set-up that ends the range before the long end (a floor, a box), where nothing else takes the muscle there. */
function curtailed(
  { entry, exercise }: PlannedEntry,
  present: ReadonlySet<string>,
  catalogue: Catalogue,
): ProgrammeFinding[] {
  const { rangeCut } = exercise;
  const fuller = rangeCut === undefined ? undefined : findExercise(catalogue, rangeCut.fuller);
  if (rangeCut === undefined || fuller === undefined || present.has(fuller.id)) return [];
  return [
    {
      id: `curtailed-range-${entry.id}`,
      kind: 'curtailed-range',
      weight: 'prefer',
      entryIds: [entry.id],
      message: { id: 'curtailedRange', values: { exercise: exercise.name, by: rangeCut.by, better: fuller.name } },
    },
  ];
}

/** A muscle with two exercises or more in the session, none of them hard where it is long. */
function unbalanced(muscle: string, entries: readonly PlannedEntry[]): ProgrammeFinding[] {
  const own = entries.filter(({ exercise }) => exercise.muscles.direct.includes(muscle));
  const kinds = new Set(own.map(({ exercise }) => exercise.id));
  if (kinds.size < 2 || own.some(({ exercise }) => exercise.hardestAt !== 'short')) return [];
  return [
    {
      id: `profile-balance-${muscle.replaceAll(' ', '-')}`,
      kind: 'profile-balance',
      weight: 'prefer',
      entryIds: own.map(({ entry }) => entry.id),
      message: { id: 'profileBalance', values: { count: own.length, muscle } },
    },
  ];
}
