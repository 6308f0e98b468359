import { randomUUID } from 'node:crypto';
import type { Changes } from '../store/changes.ts';
import { findClip } from '../store/clips.ts';
import { listTicks } from '../store/judgements.ts';
import { listReps } from '../store/reps.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { assertJudged, repIdsFor, sessionCatalogue } from './judging.ts';

/**
 * Ticks reps, or the whole set, as looked at and fine; or takes that back. Taking one rep back out of a tick for
 * the whole set leaves ticks on the other reps; taking the whole set back takes every rep's tick with it.
 */
export const setTicks: Handler<'ticks.set'> = (context, { clipId, criterion, reps, fine }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const catalogue = sessionCatalogue(context, clip.session_id);
  assertJudged(catalogue, clip.exercise, criterion);
  const repIds = repIdsFor(reading, clip, reps);
  return actOnSession(context, clip.session_id, (changes) => {
    const wanted = wantedTicks(changes, clipId, criterion, repIds, fine ? 'tick' : 'untick');
    writeTicks(changes, clipId, criterion, wanted);
    const values = { exercise: clip.exercise, criterion, fault: '', reps: reps === 'set' ? [] : reps };
    return { name: { id: fine ? 'ticked' : 'tickRemoved', values }, value: {} };
  });
};

/** Ticks what is not marked yet on a clip, in one act. */
export const setManyTicks: Handler<'ticks.setMany'> = (context, { clipId, ticks }) => {
  const { reading } = context.library();
  const clip = findClip(reading, clipId);
  const catalogue = sessionCatalogue(context, clip.session_id);
  const wanted = ticks.map(({ criterion, reps }) => {
    assertJudged(catalogue, clip.exercise, criterion);
    return { criterion, repIds: repIdsFor(reading, clip, reps) };
  });
  return actOnSession(context, clip.session_id, (changes) => {
    for (const { criterion, repIds } of wanted) {
      writeTicks(changes, clipId, criterion, wantedTicks(changes, clipId, criterion, repIds, 'tick'));
    }
    return { name: { id: 'restMarkedFine', values: { clip: clip.name } }, value: {} };
  });
};

/** Rep ids; null stands for the whole set. */
type TickedReps = ReadonlySet<string | null>;

function wantedTicks(
  changes: Changes,
  clipId: string,
  criterion: string,
  repIds: 'set' | readonly string[],
  how: 'tick' | 'untick',
): TickedReps {
  const there: TickedReps = new Set(listTicks(changes.reading, clipId, criterion).map((tick) => tick.rep_id));
  if (how === 'tick') return there.union(new Set(repIds === 'set' ? [null] : repIds));
  if (repIds === 'set') return new Set();
  const everyRep = listReps(changes.reading, clipId).map((rep) => rep.id);
  const spread: TickedReps = there.has(null) ? new Set(everyRep) : there;
  return spread.difference(new Set(repIds));
}

function writeTicks(changes: Changes, clipId: string, criterion: string, wanted: TickedReps): void {
  const rows = listTicks(changes.reading, clipId, criterion);
  for (const row of rows) if (!wanted.has(row.rep_id)) changes.remove('tick', { id: row.id });
  const there = new Set(rows.map((row) => row.rep_id));
  for (const repId of wanted.difference(there)) {
    changes.insert('tick', { id: randomUUID(), clip_id: clipId, criterion, rep_id: repId });
  }
}
