import { type Catalogue, faultsFor, findExercise } from '../../../engine/exercises/catalogue.ts';
import type { Exercise, Fault } from '../../../engine/exercises/exercise.ts';
import type { Reps } from '../../../engine/review/review.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import type { ExactMoment } from '../../../engine/time/moment.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import type { Changes } from '../store/changes.ts';
import type { ClipRow } from '../store/clips.ts';
import type { Reading } from '../store/connection.ts';
import { readFrameTicks } from '../store/frameTables.ts';
import { sectionOf } from '../store/framing.ts';
import { parkUnfit } from '../store/parked.ts';
import { listReps } from '../store/reps.ts';
import { findSession, findSessionAnywhere } from '../store/sessions.ts';

/** An exercise of the catalogue. Throws `bad-request`. */
export function knownExercise(catalogue: Catalogue, exerciseId: string): Exercise {
  const exercise = findExercise(catalogue, exerciseId);
  if (exercise) return exercise;
  const shown = exerciseId.slice(0, 60);
  throw new ProblemError('bad-request', 'exerciseUnknown', { exercise: shown });
}

/** Throws `bad-request` unless an exercise is judged by a criterion. */
export function assertJudged(catalogue: Catalogue, exerciseId: string, criterion: string): void {
  const exercise = knownExercise(catalogue, exerciseId);
  if (exercise.criteria.some((each) => each.id === criterion)) return;
  const name = criterionName(catalogue, criterion, exerciseId);
  throw new ProblemError('bad-request', 'notJudgedBy', { exercise: exercise.name, criterion: name });
}

/** A fault of an exercise under a criterion; null for none. Throws `bad-request` for one that isn't known there. */
export function knownFault(
  catalogue: Catalogue,
  exerciseId: string,
  criterion: string,
  faultId: string | null,
): Fault | null {
  if (faultId === null) return null;
  const exercise = knownExercise(catalogue, exerciseId);
  const fault = faultsFor(exercise, criterion).find((each) => each.id === faultId);
  if (fault) return fault;
  const name = criterionName(catalogue, criterion, exerciseId);
  throw new ProblemError('bad-request', 'faultUnknown', {
    fault: faultId.slice(0, 60),
    exercise: exercise.name,
    criterion: name,
  });
}

/** A frame that a clip shows as an exact moment. Throws `conflict` when the clip has no such frame, or its section leaves it out. */
export function exactMoment(reading: Reading, clip: ClipRow, frame: number): ExactMoment {
  const section = sectionOf(clip);
  if (section === null || (frame >= section.from.frame && frame <= section.to.frame)) {
    return footageMoment(reading, clip, frame);
  }
  throw new ProblemError('conflict', 'frameOutsideSection', { clip: clip.name, frame });
}

/** A frame of a clip's footage as an exact moment, also outside of its section. Throws `conflict` when there is no such frame. */
export function footageMoment(reading: Reading, clip: ClipRow, frame: number): ExactMoment {
  const ticks = clip.footage_id === null ? undefined : readFrameTicks(reading, clip.footage_id, frame);
  if (ticks !== undefined) return { frame, ticks };
  throw new ProblemError('conflict', 'noFrame', { clip: clip.name, frame });
}

/** The ids of the reps a judgement names; `'set'` stays. Throws `conflict` for a rep that isn't marked. */
export function repIdsFor(reading: Reading, clip: ClipRow, reps: Reps): 'set' | string[] {
  if (reps === 'set') return 'set';
  const rows = listReps(reading, clip.id);
  return [...new Set(reps)].map((number) => {
    const row = rows[number - 1];
    if (row) return row.id;
    throw new ProblemError('conflict', 'repsNotMarked', { rep: number, clip: clip.name, reps: rows.length });
  });
}

/** The judging data of a session: under the version of the rubric that it is judged by. Throws `not-found`. */
export function sessionCatalogue(context: Context, sessionId: string): Catalogue {
  return context.catalogue(findSession(context.library().reading, sessionId).rubric_version);
}

/** Parks what means nothing for an exercise as a session judges it, within one act; an exercise nobody knows says nothing. */
export function parkUnfitOf(
  context: Context,
  changes: Changes,
  judged: { readonly sessionId: string; readonly exercise: string; readonly clipIds: readonly string[] },
): void {
  const catalogue = context.catalogue(findSessionAnywhere(changes.reading, judged.sessionId).rubric_version);
  const exercise = findExercise(catalogue, judged.exercise);
  if (exercise !== undefined) parkUnfit(changes, exercise, judged.clipIds);
}
