import { randomUUID } from 'node:crypto';
import { acrossCameras, type CameraOfSet } from '../../../engine/cameras/cameraClock.ts';
import { frameStartUs, nearestFrame } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import type { Changes, Row } from './changes.ts';
import { type ClipRow, listClips } from './clips.ts';
import { frameOf } from './columns.ts';
import { all, type Reading } from './connection.ts';
import { readFrameTable } from './frameTables.ts';
import { flagIdsOfRep, repIdsOfFlag } from './judgements.ts';
import { edgeColumns, edgeMoment, listReps, type RepRow } from './reps.ts';

/** The live clips that show one set, the leading one first; the clip alone where nobody else filmed it. */
export function camerasOf(reading: Reading, clip: ClipRow): ClipRow[] {
  const clips = listClips(reading, clip.entry_id);
  const lead = clips.find(({ id }) => id === clip.same_set_as) ?? clip;
  return [lead, ...clips.filter((one) => one.id !== lead.id && one.same_set_as === lead.id)];
}

/**
 * Keeps the cameras of a set in step, at the end of an act: where it changed reps of a clip, the same reps are in the other clips of
 * its set, at the same moments by their own clocks, with what was judged on them. Reps that went are gone in all.
 */
export function keepCamerasInStep(changes: Changes): void {
  const touched = new Set(
    changes.list.flatMap(({ table, before, after }) => (table === 'rep' ? String((after ?? before)?.clip_id) : [])),
  );
  for (const clipId of touched) {
    const [clip] = all<ClipRow>(changes.reading, 'SELECT * FROM clip WHERE id = ?', clipId);
    if (clip === undefined) continue;
    const others = camerasOf(changes.reading, clip).filter(({ id }) => id !== clip.id && !touched.has(id));
    for (const other of others) copyReps(changes, clip, other);
  }
}

/** Gives a clip the reps of another camera of its set. Rows that name each other stay, so that what was judged on them stays. */
function copyReps(changes: Changes, from: ClipRow, to: ClipRow): void {
  const tables = { from: tableOf(changes.reading, from), to: tableOf(changes.reading, to) };
  if (tables.from === undefined || tables.to === undefined) return;
  const place = placing(from, tables.from, to, tables.to);
  const named = listReps(changes.reading, from.id).map((row) => {
    if (row.same_rep !== null) return row;
    changes.update('rep', { id: row.id }, { same_rep: row.id });
    return { ...row, same_rep: row.id };
  });
  const there = new Map(listReps(changes.reading, to.id).map((row) => [row.same_rep, row]));
  const wanted = new Set(named.map(({ same_rep }) => same_rep));
  for (const row of there.values()) if (!wanted.has(row.same_rep)) removeRepWithMarks(changes, row);
  let after = -1;
  for (const row of named) {
    const columns = edgesOn(row, place, after);
    after = Number(columns.start_frame);
    const known = there.get(row.same_rep);
    if (known !== undefined) changes.update('rep', { id: known.id }, columns);
    else changes.insert('rep', { id: randomUUID(), clip_id: to.id, same_rep: row.same_rep, ...columns });
  }
}

/** Two reps that two cameras saw start no further apart than this. */
const sameRepUs = 700_000;

/**
 * Gives two cameras of a set the same reps. Those that start at the same time are one; what only the other camera had comes to the lead
 * too, so that nothing that was judged is lost; then the other has what the lead has, at the lead's moments.
 */
export function joinReps(changes: Changes, lead: ClipRow, other: ClipRow): void {
  const tables = { lead: tableOf(changes.reading, lead), other: tableOf(changes.reading, other) };
  if (tables.lead === undefined || tables.other === undefined) return;
  const onLead = placing(other, tables.other, lead, tables.lead);
  const free = new Set(listReps(changes.reading, lead.id));
  for (const row of listReps(changes.reading, other.id)) {
    const start = onLead.usOf(frameOf(row, 'start') ?? 0);
    const leadTable = tables.lead;
    const apart = (one: RepRow) => Math.abs(frameStartUs(leadTable, frameOf(one, 'start') ?? 0) - start);
    const [nearest] = [...free].sort((a, b) => apart(a) - apart(b));
    if (nearest !== undefined && apart(nearest) <= sameRepUs * lead.real_time_factor) {
      free.delete(nearest);
      changes.update('rep', { id: nearest.id }, { same_rep: nearest.id });
      changes.update('rep', { id: row.id }, { same_rep: nearest.id });
      continue;
    }
    changes.update('rep', { id: row.id }, { same_rep: row.id });
    const columns = edgesOn(row, onLead, -1);
    changes.insert('rep', { id: randomUUID(), clip_id: lead.id, same_rep: row.id, ...columns });
  }
  copyReps(changes, lead, other);
}

type Place = {
  readonly usOf: (frame: number) => number;
  readonly frameOf: (frame: number) => number;
  readonly table: FrameTable;
};

const cameraOf = (clip: ClipRow): CameraOfSet => ({
  realTimeFactor: clip.real_time_factor,
  offsetUs: clip.same_set_offset_us ?? 0,
});

/** Where a frame of one clip lies in another of its set. */
function placing(from: ClipRow, fromTable: FrameTable, to: ClipRow, toTable: FrameTable): Place {
  const usOf = (frame: number): number => acrossCameras(frameStartUs(fromTable, frame), cameraOf(from), cameraOf(to));
  return { usOf, frameOf: (frame) => nearestFrame(toTable, usOf(frame)), table: toTable };
}

/** A rep's edges in the other clip, after the start of the rep before; an edge that the other clip doesn't hold any more is left out. */
function edgesOn(row: RepRow, { frameOf: placeOf, table }: Place, after: number): Row {
  const last = table.ticks.length - 1;
  let least = Math.min(after + 1, last);
  const columns = edgeColumns.map((edge) => {
    const frame = frameOf(row, edge);
    const there = frame === undefined ? undefined : placeOf(frame);
    const kept = edge === 'start' ? Math.max(least, there ?? 0) : there;
    if (kept === undefined || kept < least) return edgeMoment(edge, undefined, 'person');
    least = kept + 1;
    return edgeMoment(edge, { frame: kept, ticks: table.ticks[kept] ?? 0 }, 'person');
  });
  return Object.assign({}, ...columns);
}

function removeRepWithMarks(changes: Changes, row: RepRow): void {
  const flagIds = flagIdsOfRep(changes.reading, row.id);
  changes.removeWhere('flag_rep', 'rep_id', row.id);
  for (const flagId of flagIds) {
    if (repIdsOfFlag(changes.reading, flagId).length > 0) continue;
    changes.removeWhere('suggestion_answer', 'flag_id', flagId);
    changes.remove('flag', { id: flagId });
  }
  changes.removeWhere('tick', 'rep_id', row.id);
  changes.remove('rep', { id: row.id });
}

const tableOf = (reading: Reading, clip: ClipRow): FrameTable | undefined =>
  clip.footage_id === null ? undefined : readFrameTable(reading, clip.footage_id, 'original');
