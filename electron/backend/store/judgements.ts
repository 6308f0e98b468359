import * as v from 'valibot';
import { messageSchema } from '../../../engine/message/message.ts';
import type { Flag, Reps, Tick } from '../../../engine/review/review.ts';
import type { Severity } from '../../../engine/rubric/rubric.ts';
import type { Row } from './changes.ts';
import { momentOf } from './columns.ts';
import { all, first, type Reading } from './connection.ts';
import { noteInNewNames } from './oldNames.ts';

export type FlagRow = Row & {
  readonly id: string;
  readonly clip_id: string;
  readonly ordinal: number;
  readonly criterion: string;
  readonly fault: string | null;
  readonly severity: Severity | null;
  readonly whole_set: number;
  readonly note: string;
  /** What the note says, as a message in JSON, while it is a suggestion's own words; null = the coach's. */
  readonly note_message: string | null;
  readonly cue: string;
  /** 1 = it means nothing for the exercise that its clip is judged as by now, and doesn't count. */
  readonly parked: number;
};

/** A clip's flags that count, in the order of their moments. */
export function listFlags(reading: Reading, clipId: string): FlagRow[] {
  return listFlagsAnywhere(reading, clipId).filter((flag) => flag.parked === 0);
}

/** A clip's flags, those that are parked too, in the order of their moments. */
export function listFlagsAnywhere(reading: Reading, clipId: string): FlagRow[] {
  return all<FlagRow>(
    reading,
    'SELECT * FROM flag WHERE clip_id = ? ORDER BY at_frame, at_seconds, ordinal, id',
    clipId,
  );
}

/** One flag, or undefined. */
export function findFlag(reading: Reading, flagId: string): FlagRow | undefined {
  return first<FlagRow>(reading, 'SELECT * FROM flag WHERE id = ?', flagId);
}

/** The ids of the reps that a flag names; empty for the whole set. */
export function repIdsOfFlag(reading: Reading, flagId: string): string[] {
  const rows = all<{ rep_id: string }>(reading, 'SELECT rep_id FROM flag_rep WHERE flag_id = ?', flagId);
  return rows.map((row) => row.rep_id);
}

/** The ids of the flags that name a rep. */
export function flagIdsOfRep(reading: Reading, repId: string): string[] {
  const rows = all<{ flag_id: string }>(reading, 'SELECT flag_id FROM flag_rep WHERE rep_id = ?', repId);
  return rows.map((row) => row.flag_id);
}

/** The place in line for a clip's next flag. */
export function nextFlagOrdinal(reading: Reading, clipId: string): number {
  const sql = 'SELECT coalesce(max(ordinal), 0) + 1 AS next FROM flag WHERE clip_id = ?';
  return first<{ next: number }>(reading, sql, clipId)?.next ?? 1;
}

/** A flag as the review format has it; `numbers` gives the rep number of each rep id of its clip. */
export function flagOf(reading: Reading, row: FlagRow, numbers: ReadonlyMap<string, number>): Flag {
  const at = momentOf(row, 'at');
  if (!at) throw new Error(`Flag ${row.id} has no moment.`);
  return {
    id: row.id,
    clip: row.clip_id,
    criterion: row.criterion,
    fault: row.fault,
    severity: row.severity,
    reps: row.whole_set ? 'set' : numbersOf(repIdsOfFlag(reading, row.id), numbers),
    at,
    note: row.note,
    ...(row.note_message !== null && {
      noteMessage: noteInNewNames(v.parse(messageSchema, JSON.parse(row.note_message))),
    }),
    cue: row.cue,
  };
}

/** Rep numbers of rep ids, ascending. */
export function numbersOf(repIds: readonly string[], numbers: ReadonlyMap<string, number>): Exclude<Reps, 'set'> {
  return repIds.flatMap((id) => numbers.get(id) ?? []).sort((a, b) => a - b);
}

export type TickRow = Row & {
  readonly id: string;
  readonly clip_id: string;
  readonly criterion: string;
  readonly rep_id: string | null;
  /** 1 = it means nothing for the exercise that its clip is judged as by now, and doesn't count. */
  readonly parked: number;
};

/** A clip's ticks that count; of one criterion, or of all. */
export function listTicks(reading: Reading, clipId: string, criterion?: string): TickRow[] {
  return listTicksAnywhere(reading, clipId, criterion).filter((tick) => tick.parked === 0);
}

/** A clip's ticks, those that are parked too; of one criterion, or of all. */
export function listTicksAnywhere(reading: Reading, clipId: string, criterion?: string): TickRow[] {
  return all<TickRow>(
    reading,
    'SELECT * FROM tick WHERE clip_id = ? AND criterion = coalesce(?, criterion) ORDER BY criterion, id',
    clipId,
    criterion ?? null,
  );
}

/** A clip's ticks as the review format has them: one for the whole set, one for the reps, of each criterion. */
export function ticksOf(rows: readonly TickRow[], clipId: string, numbers: ReadonlyMap<string, number>): Tick[] {
  const byCriterion = Map.groupBy(rows, (row) => row.criterion);
  return [...byCriterion].flatMap(([criterion, ofCriterion]) => {
    const repIds = ofCriterion.flatMap((row) => row.rep_id ?? []);
    const wholeSet = ofCriterion.some((row) => row.rep_id === null);
    const ticks: Tick[] = [];
    if (wholeSet) ticks.push({ clip: clipId, criterion, reps: 'set' });
    if (repIds.length > 0) ticks.push({ clip: clipId, criterion, reps: numbersOf(repIds, numbers) });
    return ticks;
  });
}
