import type { NameMode } from '../../../engine/names/shownName.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Trainee } from '../../contract/trainees.ts';
import type { Row } from './changes.ts';
import { type EquipmentColumn, equipmentColumn, equipmentOfRow } from './columns.ts';
import { all, first, type Reading, run, type Writing } from './connection.ts';

export type TraineeRow = Row &
  Omit<Trainee, 'minor' | 'equipment'> &
  EquipmentColumn & {
    readonly minor: number;
    readonly created_at: string;
    /** How the trainee wants to be named in what leaves the desk. */
    readonly names: NameMode;
    /** What the coach notes for themselves. */
    readonly notes: string;
    /** Since when they are off the desk; null = they are on it. */
    readonly archived_at: string | null;
  };

/** One trainee. Throws `not-found`. */
export function findTrainee(reading: Reading, traineeId: string): TraineeRow {
  const trainee = first<TraineeRow>(reading, 'SELECT * FROM trainee WHERE id = ?', traineeId);
  if (!trainee) throw new ProblemError('not-found', 'traineeGone');
  return trainee;
}

/** Every trainee by name. */
export function listTrainees(reading: Reading): TraineeRow[] {
  return all<TraineeRow>(reading, 'SELECT * FROM trainee ORDER BY name COLLATE NOCASE, id');
}

/** A trainee as requests have it. */
export function traineeOf(row: TraineeRow): Trainee {
  const { id, name, goal, experience, units } = row;
  return { id, name, goal, experience, units, minor: row.minor === 1, ...equipmentOfRow(row) };
}

/** The columns of a trainee. */
export function traineeColumns(trainee: Omit<Trainee, 'id'>): Row {
  const { name, goal, experience, units, minor, equipment } = trainee;
  return { name, goal, experience, units, minor: minor ? 1 : 0, ...equipmentColumn(equipment) };
}

/** Removes a trainee without sessions, and what the history tells of them. */
export function removeTrainee(writing: Writing, traineeId: string): void {
  const changes = "SELECT act_id FROM act_change WHERE table_name = 'trainee' AND json_extract(row_key, '$.id') = ?";
  run(writing, `DELETE FROM act WHERE id IN (${changes})`, traineeId);
  run(writing, 'DELETE FROM trainee WHERE id = ?', traineeId);
}
