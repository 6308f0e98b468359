import { randomUUID } from 'node:crypto';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Message, MessageValues } from '../../../engine/message/message.ts';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { CheckedParams } from '../../contract/requests.ts';
import type { Context } from '../context/context.ts';
import type { Changes, Row } from '../store/changes.ts';
import { type ClipHome, findClip } from '../store/clips.ts';
import { momentColumns } from '../store/columns.ts';
import type { Reading } from '../store/connection.ts';
import { type FlagRow, findFlag, nextFlagOrdinal, numbersOf, repIdsOfFlag } from '../store/judgements.ts';
import { listReps } from '../store/reps.ts';
import { actOnSession } from './acts.ts';
import { deleteFlag } from './clips.ts';
import type { Handler } from './handler.ts';
import { assertJudged, exactMoment, knownFault, repIdsFor, sessionCatalogue } from './judging.ts';

export const addFlag: Handler<'flags.add'> = (context, { clipId, ...asked }) => {
  const clip = findClip(context.library().reading, clipId);
  const put = newFlag(context, clip, asked);
  return actOnSession(context, clip.session_id, (changes) => {
    const flagId = put(changes);
    return { name: { id: 'flagAdded', values: flagValues(changes.reading, flagId) }, value: { flagId } };
  });
};

/** A flag to be added; `noteMessage` says as data what its note says. */
export type NewFlag = Omit<CheckedParams<'flags.add'>, 'clipId'> & { readonly noteMessage?: Message };

/**
 * Checks a new flag and gives what adds it within an act, and gives its id. Praise and plain notes name no fault; a fault without a cue
 * of the coach's own gets the fault's usual one. Throws `bad-request` or `conflict`.
 */
export function newFlag(
  context: Context,
  clip: ClipHome,
  { criterion, severity, reps, frame, note, noteMessage, cue, ...asked }: NewFlag,
): (changes: Changes) => string {
  const { reading } = context.library();
  const catalogue = sessionCatalogue(context, clip.session_id);
  assertJudged(catalogue, clip.exercise, criterion);
  const fault = namesFault(severity) ? knownFault(catalogue, clip.exercise, criterion, asked.fault) : null;
  const at = exactMoment(reading, clip, frame);
  const repIds = repIdsFor(reading, clip, reps);
  const id = randomUUID();
  return (changes) => {
    changes.insert('flag', {
      id,
      clip_id: clip.id,
      ordinal: nextFlagOrdinal(changes.reading, clip.id),
      criterion,
      fault: fault?.id ?? null,
      severity,
      whole_set: repIds === 'set' ? 1 : 0,
      ...momentColumns('at', at),
      note,
      note_message: noteMessage === undefined ? null : JSON.stringify(noteMessage),
      cue: cue === '' ? (fault?.cue.outcome ?? '') : cue,
    });
    setReps(changes, id, repIds);
    return id;
  };
}

/** Whether flags of a severity can name a fault: praise and plain notes find none. */
const namesFault = (severity: Severity | null): boolean => severity !== null && severity !== 'keep';

export const updateFlag: Handler<'flags.update'> = (context, { flagId, change }) => {
  const { reading } = context.library();
  const flag = existing(reading, flagId);
  const clip = findClip(reading, flag.clip_id);
  const judged = judgedAs(sessionCatalogue(context, clip.session_id), clip.exercise, flag, change);
  const at = change.frame === undefined ? undefined : exactMoment(reading, clip, change.frame);
  const repIds = change.reps === undefined ? undefined : repIdsFor(reading, clip, change.reps);
  return actOnSession(context, clip.session_id, (changes) => {
    changes.update(
      'flag',
      { id: flagId },
      {
        ...judged,
        ...(change.note !== undefined && change.note !== flag.note && { note: change.note, note_message: null }),
        ...(at && momentColumns('at', at)),
        ...(repIds && { whole_set: repIds === 'set' ? 1 : 0 }),
      },
    );
    if (repIds) setReps(changes, flagId, repIds);
    return { name: { id: 'flagChanged', values: flagValues(changes.reading, flagId) }, value: {} };
  });
};

export const removeFlag: Handler<'flags.remove'> = (context, { flagId }) => {
  const { reading } = context.library();
  const clip = findClip(reading, existing(reading, flagId).clip_id);
  const values = flagValues(reading, flagId);
  return actOnSession(context, clip.session_id, (changes) => {
    deleteFlag(changes, flagId);
    return { name: { id: 'flagRemoved', values }, value: {} };
  });
};

export function existing(reading: Reading, flagId: string): FlagRow {
  const flag = findFlag(reading, flagId);
  if (!flag) throw new ProblemError('not-found', 'flagGone');
  return flag;
}

/** Criterion, fault, severity and cue after a change: a cue that was the old fault's usual one follows the fault. */
function judgedAs(
  catalogue: Catalogue,
  exercise: string,
  flag: FlagRow,
  change: CheckedParams<'flags.update'>['change'],
): Row {
  const criterion = change.criterion ?? flag.criterion;
  const severity = change.severity === undefined ? flag.severity : change.severity;
  if (change.criterion !== undefined) assertJudged(catalogue, exercise, criterion);
  const kept = criterion === flag.criterion ? flag.fault : null;
  const faultId = !namesFault(severity) ? null : change.fault === undefined ? kept : change.fault;
  if (faultId === flag.fault) return { criterion, severity, ...(change.cue !== undefined && { cue: change.cue }) };
  const fault = knownFault(catalogue, exercise, criterion, faultId);
  const usual = knownFaultOrNull(catalogue, exercise, flag)?.cue.outcome ?? '';
  const cue = change.cue ?? (flag.cue === usual || flag.cue === '' ? (fault?.cue.outcome ?? '') : flag.cue);
  return { criterion, severity, fault: faultId, cue };
}

function knownFaultOrNull(catalogue: Catalogue, exercise: string, flag: FlagRow) {
  const found = catalogue.exercises.find((each) => each.id === exercise);
  return found?.faults.find((each) => each.id === flag.fault && each.criterion === flag.criterion) ?? null;
}

function setReps(changes: Changes, flagId: string, repIds: 'set' | readonly string[]): void {
  const wanted = new Set(repIds === 'set' ? [] : repIds);
  const named = new Set(repIdsOfFlag(changes.reading, flagId));
  for (const id of named.difference(wanted)) changes.remove('flag_rep', { flag_id: flagId, rep_id: id });
  for (const id of wanted.difference(named)) changes.insert('flag_rep', { flag_id: flagId, rep_id: id });
}

/** What the history says of a flag. */
export function flagValues(reading: Reading, flagId: string): MessageValues {
  const flag = existing(reading, flagId);
  const clip = findClip(reading, flag.clip_id);
  const numbers = new Map(listReps(reading, clip.id).map((rep, index) => [rep.id, index + 1]));
  return {
    kind: flag.severity === null ? 'note' : flag.severity === 'keep' ? 'praise' : 'flag',
    exercise: clip.exercise,
    criterion: flag.criterion,
    fault: flag.fault ?? '',
    reps: flag.whole_set ? [] : numbersOf(repIdsOfFlag(reading, flagId), numbers),
  };
}
