import * as v from 'valibot';
import { equalSets, listedPlanSchema, type Plan, runsOfSets } from '../../../engine/review/plan.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Row } from './changes.ts';
import type { OverrideColumns } from './columns.ts';
import { all, first, type Reading } from './connection.ts';

/** The columns of a plan; all null where there is none. */
export type PlanColumns = {
  readonly plan_sets: number | null;
  readonly plan_reps: number | null;
  readonly plan_load_kg: number | null;
  readonly plan_tempo: string | null;
  readonly plan_reps_in_reserve: number | null;
  /** JSON of a plan whose sets differ. */
  readonly plan_list: string | null;
};

export type EntryRow = Row &
  OverrideColumns &
  PlanColumns & {
    readonly id: string;
    readonly session_id: string;
    readonly ordinal: number;
    readonly exercise: string;
    readonly sets_done: number | null;
    /** When it went into the bin; null = it is in use. */
    readonly removed_at: string | null;
  };

/** One exercise entry that is in use. Throws `not-found`, also where it or its session lies in the bin. */
export function findEntry(reading: Reading, entryId: string): EntryRow {
  const { session_removed_at: sessionRemovedAt, ...entry } = findEntryAnywhere(reading, entryId);
  if (entry.removed_at === null && sessionRemovedAt === null) return entry;
  throw new ProblemError('not-found', 'entryGone');
}

/** One exercise entry, be it in the bin, and since when its session is. Throws `not-found`. */
export function findEntryAnywhere(
  reading: Reading,
  entryId: string,
): EntryRow & { readonly session_removed_at: string | null } {
  const entry = first<EntryRow & { readonly session_removed_at: string | null }>(
    reading,
    `SELECT entry.*, session.removed_at AS session_removed_at FROM entry
       JOIN session ON session.id = entry.session_id WHERE entry.id = ?`,
    entryId,
  );
  if (!entry) throw new ProblemError('not-found', 'entryGone');
  return entry;
}

/** A session's entries that are in use, in order. */
export function listEntries(reading: Reading, sessionId: string): EntryRow[] {
  return listEntriesAnywhere(reading, sessionId).filter((entry) => entry.removed_at === null);
}

/** A session's entries, those in the bin too, in order. */
export function listEntriesAnywhere(reading: Reading, sessionId: string): EntryRow[] {
  return all<EntryRow>(reading, 'SELECT * FROM entry WHERE session_id = ? ORDER BY ordinal, id', sessionId);
}

/** The place in line for a session's next entry. */
export function nextEntryOrdinal(reading: Reading, sessionId: string): number {
  const sql = 'SELECT coalesce(max(ordinal), 0) + 1 AS next FROM entry WHERE session_id = ?';
  return first<{ next: number }>(reading, sql, sessionId)?.next ?? 1;
}

/** The columns of a plan; all null when there is none. */
export function planColumns(plan: Plan | null | undefined): Row & PlanColumns {
  const runs = plan ? runsOfSets(plan) : [];
  const [equal] = runs.length === 1 ? runs : [];
  return {
    plan_sets: equal?.count ?? null,
    plan_reps: equal?.set.reps ?? null,
    plan_load_kg: equal?.set.loadKg ?? null,
    plan_tempo: equal?.set.tempo ?? null,
    plan_reps_in_reserve: equal?.set.repsInReserve ?? null,
    plan_list: plan && runs.length > 1 ? JSON.stringify(plan) : null,
  };
}

/** The plan that an entry's columns hold, or undefined. */
export function planOf(row: PlanColumns): Plan | undefined {
  if (row.plan_list !== null) return v.parse(listedPlanSchema, JSON.parse(row.plan_list));
  if (row.plan_sets === null || row.plan_reps === null) return undefined;
  return equalSets({
    sets: row.plan_sets,
    reps: row.plan_reps,
    ...(row.plan_load_kg !== null && { loadKg: row.plan_load_kg }),
    ...(row.plan_tempo !== null && { tempo: row.plan_tempo }),
    ...(row.plan_reps_in_reserve !== null && { repsInReserve: row.plan_reps_in_reserve }),
  });
}
