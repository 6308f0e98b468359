import { loadAtPlaceKg } from '../../../engine/review/plan.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';
import { type PlanColumns, planOf } from './entries.ts';

/** The speed of a clip's fastest rep as it is kept: from what it was made, and null where none is measured in metres. */
export type KeptSpeed = { readonly madeFrom: string; readonly fastestMps: number | null };

/** What is kept of a clip's speed. */
export function findKeptSpeed(reading: Reading, clipId: string): KeptSpeed | undefined {
  const sql = 'SELECT made_from AS madeFrom, fastest_mps AS fastestMps FROM clip_speed WHERE clip_id = ?';
  return first<KeptSpeed>(reading, sql, clipId);
}

/** Keeps a clip's speed; derived data, so it is no act. */
export function keepSpeed(writing: Writing, clipId: string, { madeFrom, fastestMps }: KeptSpeed): void {
  const sql = 'INSERT OR REPLACE INTO clip_speed (clip_id, made_from, fastest_mps) VALUES (?, ?, ?)';
  run(writing, sql, clipId, madeFrom, fastestMps);
}

/** A recorded set with its load. */
export type LoadedClip = {
  readonly sessionId: string;
  readonly date: string;
  readonly clipId: string;
  readonly exercise: string;
  readonly loadKg: number;
};

/** A recorded clip with the plan of its exercise, and which of how many clips of the exercise it is. */
type RecordedClip = Omit<LoadedClip, 'loadKg'> &
  PlanColumns & { readonly ownLoadKg: number | null; readonly place: number; readonly clips: number };

/**
 * A trainee's recorded clips of exercises done with two loads or more, the oldest first; second looks and what others
 * judged are left out. A clip without a load of its own has that of the planned set that it shows.
 */
export function listLoadedClips(reading: Reading, traineeId: string): LoadedClip[] {
  const recorded = all<RecordedClip>(
    reading,
    `SELECT session.id AS sessionId, session.date, clip.id AS clipId, entry.exercise, clip.load_kg AS ownLoadKg,
       entry.plan_sets, entry.plan_reps, entry.plan_load_kg, entry.plan_tempo, entry.plan_reps_in_reserve, entry.plan_list,
       (SELECT count(*) FROM clip AS other WHERE other.entry_id = entry.id AND other.removed_at IS NULL) AS clips,
       (SELECT count(*) FROM clip AS other WHERE other.entry_id = entry.id AND other.removed_at IS NULL
         AND other.ordinal < clip.ordinal) AS place
     FROM session JOIN entry ON entry.session_id = session.id JOIN clip ON clip.entry_id = entry.id
     WHERE session.trainee_id = ? AND session.second_look_of IS NULL AND session.read_only = 0
       AND clip.removed_at IS NULL AND entry.removed_at IS NULL AND session.removed_at IS NULL
       AND EXISTS (SELECT 1 FROM recording WHERE recording.footage_id = clip.footage_id)
     ORDER BY session.date, session.created_at, session.id, entry.ordinal, clip.ordinal`,
    traineeId,
  );
  const loaded = recorded.flatMap(({ sessionId, date, clipId, exercise, ownLoadKg, ...row }): LoadedClip[] => {
    const plan = planOf(row);
    const loadKg = ownLoadKg ?? (plan && loadAtPlaceKg(plan, { index: row.place, of: row.clips }));
    return loadKg === undefined || loadKg === 0 ? [] : [{ sessionId, date, clipId, exercise, loadKg }];
  });
  const loads = Map.groupBy(loaded, ({ exercise }) => exercise);
  return loaded.filter(({ exercise }) => new Set(loads.get(exercise)?.map(({ loadKg }) => loadKg)).size > 1);
}
