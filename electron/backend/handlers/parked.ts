import { findClip } from '../store/clips.ts';
import { findFlag, flagOf, listFlagsAnywhere, listTicksAnywhere } from '../store/judgements.ts';
import { listParkedFlags, listParkedTicks } from '../store/parked.ts';
import { listReps } from '../store/reps.ts';
import { findSession } from '../store/sessions.ts';
import { actOnSession } from './acts.ts';
import { deleteFlag } from './clips.ts';
import type { Handler } from './handler.ts';

export const getParked: Handler<'parked.get'> = (context, { sessionId }) => {
  const { reading } = context.library();
  findSession(reading, sessionId);
  const flags = listParkedFlags(reading, sessionId).flatMap(({ id, clipId }) => {
    const row = findFlag(reading, id);
    const numbers = new Map(listReps(reading, clipId).map((rep, index) => [rep.id, index + 1]));
    return row === undefined ? [] : [flagOf(reading, row, numbers)];
  });
  return { flags, ticks: listParkedTicks(reading, sessionId) };
};

export const discardParked: Handler<'parked.discard'> = (context, { clipId, flagIds, criteria }) => {
  const clip = findClip(context.library().reading, clipId);
  const all = flagIds === undefined && criteria === undefined;
  return actOnSession(context, clip.session_id, (changes) => {
    for (const flag of listFlagsAnywhere(changes.reading, clipId)) {
      if (flag.parked === 1 && (all || flagIds?.includes(flag.id))) deleteFlag(changes, flag.id);
    }
    for (const tick of listTicksAnywhere(changes.reading, clipId)) {
      if (tick.parked === 1 && (all || criteria?.includes(tick.criterion))) changes.remove('tick', { id: tick.id });
    }
    return { name: { id: 'parkedDiscarded', values: { clip: clip.name } }, value: {} };
  });
};
