import type { Clip, Entry, Flag, Review, Tick } from '../../../engine/review/review.ts';
import { ProblemError } from '../../contract/reply.ts';
import { camerasOf } from './cameras.ts';
import { type ClipRow, listClips } from './clips.ts';
import { equipmentOfRow, overrideOf } from './columns.ts';
import type { Reading } from './connection.ts';
import { drawingOf, listDrawings } from './drawings.ts';
import { type EntryRow, listEntries, planOf } from './entries.ts';
import { factsOf, findFootage } from './footage.ts';
import { framingOfRow } from './framing.ts';
import { flagOf, listFlags, listTicks, ticksOf } from './judgements.ts';
import { readLibraryFacts } from './library.ts';
import { findSetUp } from './measuring.ts';
import { listReps, repOf } from './reps.ts';
import { isSessionSound } from './rowDigests.ts';
import { findSession } from './sessions.ts';
import { findTrainee, traineeOf } from './trainees.ts';

/** All versions of the rubric are versions of this one. */
const rubricId = 'rackside';

type Judged = { readonly clip: Clip; readonly flags: readonly Flag[]; readonly ticks: readonly Tick[] };

/**
 * A session whole, in the review format, judged by the rubric of its version. Throws `not-found`, and `library-damaged` when
 * something of it changed on the disk by itself.
 */
export function readReview(reading: Reading, sessionId: string): Review {
  const session = findSession(reading, sessionId);
  if (!isSessionSound(reading, sessionId)) throw new ProblemError('library-damaged', 'sessionDamaged');
  const library = readLibraryFacts(reading);
  const { id: _, ...trainee } = traineeOf(findTrainee(reading, session.trainee_id));
  const coach = (session.coach ?? library.coach).trim();
  return {
    format: 'rackside-review',
    version: 4,
    rubric: { id: rubricId, version: session.rubric_version },
    voice: session.voice ?? library.voice,
    ...(coach !== '' && { coach }),
    trainee,
    session: {
      id: session.id,
      title: session.title,
      date: session.date,
      notes: session.notes,
      painNote: session.pain_note,
      ...overrideOf(session),
      ...equipmentOfRow(session),
    },
    entries: listEntries(reading, sessionId).map((row) => entryOf(reading, row)),
  };
}

function entryOf(reading: Reading, row: EntryRow): Entry {
  const judged = listClips(reading, row.id).map((clip) => judgedClip(reading, clip));
  const plan = planOf(row);
  return {
    id: row.id,
    exercise: row.exercise,
    ...(plan && { plan }),
    ...(row.sets_done !== null && { setsDone: row.sets_done }),
    ...overrideOf(row),
    clips: judged.map((each) => each.clip),
    flags: judged.flatMap((each) => each.flags),
    ticks: judged.flatMap((each) => each.ticks),
  };
}

function judgedClip(reading: Reading, row: ClipRow): Judged {
  const reps = listReps(reading, row.id);
  const numbers = new Map(reps.map((rep, index) => [rep.id, index + 1]));
  const footage = row.footage_id === null ? undefined : findFootage(reading, row.footage_id);
  const drawings = listDrawings(reading, row.id).map(drawingOf);
  const setUp = findSetUp(reading, row.id);
  const clip: Clip = {
    id: row.id,
    name: row.name,
    ...(footage && { facts: factsOf(footage) }),
    view: row.view,
    realTimeFactor: row.real_time_factor,
    ...(row.load_kg !== null && { loadKg: row.load_kg }),
    reps: reps.map((rep, index) => repOf(rep, index + 1)),
    ...(drawings.length > 0 && { drawings }),
    ...(setUp && { setUp }),
    ...framingOfRow(row),
    ...sameSetOf(reading, row),
  };
  return {
    clip,
    flags: listFlags(reading, row.id).map((flag) => flagOf(reading, flag, numbers)),
    ticks: ticksOf(listTicks(reading, row.id), row.id, numbers),
  };
}

/** The set that a clip shows from another side, as long as the clip that leads it is there. */
function sameSetOf(reading: Reading, row: ClipRow): Pick<Clip, 'sameSet'> {
  const [lead] = camerasOf(reading, row);
  if (lead === undefined || lead.id === row.id) return {};
  return { sameSet: { clip: lead.id, offsetUs: row.same_set_offset_us ?? 0 } };
}
