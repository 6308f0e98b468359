import { randomUUID } from 'node:crypto';
import type { RepMeasurement } from '../../../engine/motion/measurement.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Changes, Row } from '../store/changes.ts';
import { frameOf } from '../store/columns.ts';
import { flagIdsOfRep, listTicks } from '../store/judgements.ts';
import { edgeColumns, edgeMoment, listReps, type RepRow } from '../store/reps.ts';

import { edgesOf, matchReps } from './repTimes.ts';

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

/** The name of the act: "Measured: 3 reps". */
export function measuredActName(reps: number): string {
  return `Measured: ${reps} ${reps === 1 ? 'rep' : 'reps'}`;
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
