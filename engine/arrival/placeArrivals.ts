import type { ArrivedClip, OpenSession, Owner, Placement } from './arrival.ts';
import { guessTrainee, type KnownTrainee } from './guessTrainee.ts';
import { type ExerciseNames, nameClues } from './nameClues.ts';
import { PlanOrder } from './planOrder.ts';

/** What the guesses may rest on. */
export type KnownToInbox = {
  readonly trainees: readonly KnownTrainee[];
  /** The trainee whose clips came in last; null = nobody's yet. */
  readonly lastUsed: string | null;
  /** The sessions of the days in question and those that were chosen, the latest of a day first. */
  readonly sessions: readonly OpenSession[];
  readonly exercises: ExerciseNames;
};

type Housed = {
  readonly clip: ArrivedClip;
  readonly trainee: Placement['trainee'];
  readonly session: Placement['session'];
};

/**
 * Where each clip of the inbox goes, guess by guess, in the order they were filmed. What a person chose stands; a clip
 * without a clue of its own follows the plan of its session, else the clip before it of the same session.
 */
export function placeArrivals(clips: readonly ArrivedClip[], known: KnownToInbox): readonly Placement[] {
  const housed = inOrderFilmed(clips).map((clip): Housed => {
    const trainee = guessTrainee(clip, known);
    return { clip, trainee, session: trainee && guessSession(clip, trainee.value, known.sessions) };
  });
  const groups = [...Map.groupBy(housed, homeOf).values()];
  const placed = groups.flatMap((group) => placeGroup(group, known));
  const byId = new Map(placed.map((placement) => [placement.id, placement]));
  return housed.flatMap(({ clip }) => byId.get(clip.id) ?? []);
}

/** By the time they were filmed; clips of one second by their names, as cameras count them. */
function inOrderFilmed(clips: readonly ArrivedClip[]): readonly ArrivedClip[] {
  const inCount = new Intl.Collator('en', { numeric: true });
  return clips.toSorted(
    (a, b) => compare(a.recordedAt, b.recordedAt) || inCount.compare(a.name, b.name) || compare(a.id, b.id),
  );
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

const ownerKey = (owner: Owner): string => (owner.kind === 'known' ? `id ${owner.traineeId}` : `name ${owner.name}`);

const homeOf = ({ trainee, session }: Housed): string =>
  trainee === null ? '' : [ownerKey(trainee.value), session?.value.id ?? session?.value.date ?? ''].join(' ');

function guessSession(
  { choice, recordedDay }: ArrivedClip,
  owner: Owner,
  sessions: readonly OpenSession[],
): Placement['session'] {
  const own = owner.kind === 'new' ? [] : sessions.filter(({ traineeId }) => traineeId === owner.traineeId);
  const chosen = own.find(({ id }) => id === choice.sessionId);
  if (chosen !== undefined) return { value: { id: chosen.id, date: chosen.date }, basis: 'chosen' };
  const date = choice.date ?? recordedDay;
  const thatDay = own.find((session) => session.date === date);
  return { value: { id: thatDay?.id ?? null, date }, basis: choice.date === undefined ? 'recorded' : 'chosen' };
}

function placeGroup(group: readonly Housed[], { sessions, exercises }: KnownToInbox): Placement[] {
  const sessionId = group[0]?.session?.value.id ?? null;
  const plan = new PlanOrder(sessions.find(({ id }) => id === sessionId)?.entries ?? [], group.length);
  let before: Placement | null = null;
  return group.map(({ clip, trainee, session }) => {
    const exercise: Placement['exercise'] =
      // Clips of nobody in particular do not follow each other.
      guessExercise(clip, { exercises, planned: plan.next(), before: trainee === null ? null : before });
    if (exercise !== null) plan.take(exercise.value);
    const placement: Placement = {
      id: clip.id,
      trainee,
      session,
      exercise,
      view: guessView(clip, { exercises, before: exercise?.value === before?.exercise?.value ? before : null }),
      loadKg: guessLoad(clip, exercises),
    };
    before = placement;
    return placement;
  });
}

function guessExercise(
  { choice, name, folders }: ArrivedClip,
  {
    exercises,
    planned,
    before,
  }: { readonly exercises: ExerciseNames; readonly planned: string | null; readonly before: Placement | null },
): Placement['exercise'] {
  if (choice.exercise !== undefined) return { value: choice.exercise, basis: 'chosen' };
  const inFile = nameClues(name, exercises).exercise;
  if (inFile !== null) return { value: inFile, basis: 'fileName' };
  const inFolder = folders.toReversed().map((folder) => nameClues(folder, exercises).exercise);
  const told = inFolder.find((exercise) => exercise !== null);
  if (told !== undefined && told !== null) return { value: told, basis: 'folder' };
  if (planned !== null) return { value: planned, basis: 'plan' };
  const same = before?.exercise?.value;
  return same === undefined ? null : { value: same, basis: 'before' };
}

function guessView(
  { choice, seenFrom, name }: ArrivedClip,
  { exercises, before }: { readonly exercises: ExerciseNames; readonly before: Placement | null },
): Placement['view'] {
  if (choice.view !== undefined) return { value: choice.view, basis: 'chosen' };
  if (seenFrom !== null) return { value: seenFrom, basis: 'joints' };
  const told = nameClues(name, exercises).view;
  if (told !== null) return { value: told, basis: 'fileName' };
  // The camera stays where it is while the exercise does.
  const same = before?.view?.value;
  return same === undefined || same === null ? null : { value: same, basis: 'before' };
}

function guessLoad({ choice, name }: ArrivedClip, exercises: ExerciseNames): Placement['loadKg'] {
  if (choice.loadKg !== undefined) return { value: choice.loadKg, basis: 'chosen' };
  const told = nameClues(name, exercises).loadKg;
  return told === null ? null : { value: told, basis: 'fileName' };
}
