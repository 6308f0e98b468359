import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { Changes } from './changes.ts';
import { all, type Reading } from './connection.ts';
import { listFlagsAnywhere, listTicksAnywhere } from './judgements.ts';

/**
 * Parks what was judged on clips and means nothing for an exercise, and brings back what was parked and means something
 * there; within one act. What counts depends on the exercise alone, whichever way it came there.
 */
export function parkUnfit(changes: Changes, exercise: Exercise, clipIds: readonly string[]): void {
  const judged = new Set(exercise.criteria.map(({ id }) => id));
  const fits = ({ criterion, fault }: { readonly criterion: string; readonly fault: string | null }): boolean =>
    judged.has(criterion) &&
    (fault === null || exercise.faults.some((known) => known.id === fault && known.criterion === criterion));
  for (const clipId of clipIds) {
    for (const flag of listFlagsAnywhere(changes.reading, clipId)) {
      changes.update('flag', { id: flag.id }, { parked: fits(flag) ? 0 : 1 });
    }
    for (const tick of listTicksAnywhere(changes.reading, clipId)) {
      changes.update('tick', { id: tick.id }, { parked: judged.has(tick.criterion) ? 0 : 1 });
    }
  }
}

/** How many ticks of a criterion are parked on a clip. */
export type ParkedTicks = { readonly clipId: string; readonly criterion: string; readonly count: number };

/** The ids of the flags that are parked in a session, clip by clip in the order of their moments. */
export function listParkedFlags(
  reading: Reading,
  sessionId: string,
): { readonly id: string; readonly clipId: string }[] {
  return all(
    reading,
    `SELECT flag.id, clip.id AS clipId FROM entry JOIN clip ON clip.entry_id = entry.id JOIN flag ON flag.clip_id = clip.id
     WHERE entry.session_id = ? AND entry.removed_at IS NULL AND clip.removed_at IS NULL AND flag.parked = 1
     ORDER BY entry.ordinal, clip.ordinal, flag.at_frame, flag.at_seconds, flag.ordinal, flag.id`,
    sessionId,
  );
}

/** The ticks that are parked in a session, counted by clip and criterion. */
export function listParkedTicks(reading: Reading, sessionId: string): ParkedTicks[] {
  return all<ParkedTicks>(
    reading,
    `SELECT clip.id AS clipId, tick.criterion, count(*) AS count
     FROM entry JOIN clip ON clip.entry_id = entry.id JOIN tick ON tick.clip_id = clip.id
     WHERE entry.session_id = ? AND entry.removed_at IS NULL AND clip.removed_at IS NULL AND tick.parked = 1
     GROUP BY entry.ordinal, clip.ordinal, clip.id, tick.criterion ORDER BY entry.ordinal, clip.ordinal, tick.criterion`,
    sessionId,
  );
}
