import { randomUUID } from 'node:crypto';
import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import type { ManualRep } from '../../../engine/motion/reps/setEdges.ts';
import { frameStartUs, nearestFrame } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Moment } from '../../../engine/time/moment.ts';
import type { Changes, Row } from '../store/changes.ts';
import { frameOf } from '../store/columns.ts';
import { flagIdsOfRep, listTicks } from '../store/judgements.ts';
import { type EdgeColumn, edgeColumns, edgeMoment, edgeOf, listReps, type RepRow, repOf } from '../store/reps.ts';

/** Media seconds of a moment, from the clip's first frame. */
export function secondsOf(moment: Moment, table: FrameTable): number {
  if ('seconds' in moment) return moment.seconds;
  return (frameStartUs(table, moment.frame) - frameStartUs(table, 0)) / 1_000_000;
}

/** The moment of the frame nearest to media seconds. Throws a RangeError for a table without frames. */
export function momentAt(seconds: number, table: FrameTable): Moment & { readonly frame: number } {
  const frame = nearestFrame(table, frameStartUs(table, 0) + Math.round(seconds * 1_000_000));
  return { frame, ticks: table.ticks[frame] ?? 0 };
}

/** The edges of a clip's reps that a person set, one item a rep that has any; they win over what is measured. */
export function manualReps(rows: readonly RepRow[], table: FrameTable): ManualRep[] {
  return rows.flatMap((row, index) => {
    const rep = repOf(row, index + 1);
    const set = (edge: EdgeColumn) => {
      const moment = rep[edgeOf[edge]];
      return moment !== undefined && row[`${edge}_measured`] === 0 ? secondsOf(moment, table) : undefined;
    };
    const [startS, stretchedEndS, endS] = edgeColumns.map(set);
    if (startS === undefined && stretchedEndS === undefined && endS === undefined) return [];
    return [
      {
        ...(startS !== undefined && { startS }),
        ...(stretchedEndS !== undefined && { stretchedEndS }),
        ...(endS !== undefined && { endS }),
      },
    ];
  });
}

/** The moments of a measured rep's edges; no stretched end where it is one of the rep's own ends. */
export function edgesOf(rep: RepMeasurement, table: FrameTable) {
  const start = momentAt(rep.startS, table);
  const end = momentAt(rep.endS, table);
  const reachedAtS = rep.phases.eccentric?.endS ?? rep.phases.pauseStretched?.startS;
  const reached = reachedAtS === undefined ? undefined : momentAt(reachedAtS, table);
  const within = reached !== undefined && reached.frame > start.frame && reached.frame < end.frame;
  return { start, stretched_end: within ? reached : undefined, end } as const;
}

/**
 * Which of a clip's reps each measured rep is: the one it shares most time with, each once. Measured reps that share
 * less than half of the shorter one's time with any are left out.
 */
export function matchReps(
  measured: readonly RepMeasurement[],
  rows: readonly RepRow[],
  table: FrameTable,
): ReadonlyMap<number, RepRow> {
  const spans = rows.map((row, index) => ({ row, ...spanOf(rows, index, table) }));
  const pairs = measured
    .flatMap((rep) =>
      spans.map(({ row, startS, endS }) => {
        const sharedS = Math.min(rep.endS, endS) - Math.max(rep.startS, startS);
        return { rep, row, sharedS, share: sharedS / Math.max(1e-6, Math.min(rep.endS - rep.startS, endS - startS)) };
      }),
    )
    .filter(({ share }) => share >= 0.5)
    .sort((one, other) => other.sharedS - one.sharedS);
  const matches = new Map<number, RepRow>();
  const taken = new Set<string>();
  for (const { rep, row } of pairs) {
    if (matches.has(rep.index) || taken.has(row.id)) continue;
    matches.set(rep.index, row);
    taken.add(row.id);
  }
  return matches;
}

/** A rep whose end is not marked lasts until the next one starts, or the clip ends. */
function spanOf(rows: readonly RepRow[], index: number, table: FrameTable): { startS: number; endS: number } {
  const row = rows[index];
  const next = rows[index + 1];
  const clipEndS = secondsOf({ frame: table.ticks.length - 1, ticks: table.ticks.at(-1) ?? 0 }, table);
  const rep = row && repOf(row, index + 1);
  const startS = rep ? secondsOf(rep.start, table) : 0;
  if (rep?.end) return { startS, endS: secondsOf(rep.end, table) };
  return { startS, endS: next ? secondsOf(repOf(next, index + 2).start, table) : clipEndS };
}

/**
 * Makes the measured reps a clip's reps, within one act. Edges that a person set stay as they are; a rep that was
 * measured before is removed when it is not found any more and has nothing judged on it.
 */
export function markMeasuredReps(
  changes: Changes,
  clipId: string,
  measured: readonly RepMeasurement[],
  table: FrameTable,
): void {
  const rows = listReps(changes.reading, clipId);
  const matches = matchReps(measured, rows, table);
  const kept = new Set([...matches.values()].map(({ id }) => id));
  for (const row of rows) {
    if (!kept.has(row.id) && isMeasuredOnly(row) && !isJudged(changes, row)) changes.remove('rep', { id: row.id });
  }
  for (const rep of measured) {
    const row = matches.get(rep.index);
    const edges = edgesOf(rep, table);
    if (!row) {
      const columns = edgeColumns.map((edge) => edgeMoment(edge, edges[edge], 'measure'));
      changes.insert('rep', Object.assign({ id: randomUUID(), clip_id: clipId }, ...columns));
      continue;
    }
    const free = edgeColumns.filter((edge) => !isManual(row, edge));
    const columns: Row = Object.assign({}, ...free.map((edge) => edgeMoment(edge, edges[edge], 'measure')));
    if (inOrder({ ...row, ...columns })) changes.update('rep', { id: row.id }, columns);
  }
}

/** Makes a movement that was offered a rep of a clip, within one act. Its edges are a person's, who said that it counts. */
export function addOfferedRep(changes: Changes, clipId: string, offered: RepMeasurement, table: FrameTable): void {
  const edges = edgesOf(offered, table);
  const columns = edgeColumns.map((edge) => edgeMoment(edge, edges[edge], 'person'));
  changes.insert('rep', Object.assign({ id: randomUUID(), clip_id: clipId }, ...columns));
}

const isManual = (row: RepRow, edge: (typeof edgeColumns)[number]): boolean =>
  row[`${edge}_measured`] === 0 && (frameOf(row, edge) !== undefined || row[`${edge}_seconds`] !== null);

const isMeasuredOnly = (row: RepRow): boolean => edgeColumns.every((edge) => !isManual(row, edge));

function isJudged(changes: Changes, row: RepRow): boolean {
  if (flagIdsOfRep(changes.reading, row.id).length > 0) return true;
  return listTicks(changes.reading, row.clip_id).some((tick) => tick.rep_id === row.id);
}

function inOrder(row: Row): boolean {
  const frames = edgeColumns.flatMap((edge) => frameOf(row, edge) ?? []);
  return frames.every((frame, index) => index === 0 || frame > (frames[index - 1] ?? frame));
}
