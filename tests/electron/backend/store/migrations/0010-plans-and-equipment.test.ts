import Database from 'better-sqlite3';
import { beforeEach, describe, expect, it } from 'vitest';
import {
  type EquipmentColumn,
  equipmentColumn,
  equipmentOfRow,
} from '../../../../../electron/backend/store/columns.ts';
import { type EntryRow, planColumns, planOf } from '../../../../../electron/backend/store/entries.ts';
import { readMigrations } from '../../../../../electron/backend/store/migrations.ts';
import type { Equipment } from '../../../../../engine/exercises/equipment.ts';
import { appFolder } from '../../workbench.ts';

const version = 10;

let database: Database.Database;

/** A library one shape older with a plan in it, brought to this one as the app does it. */
beforeEach(() => {
  const steps = readMigrations(appFolder).slice(0, version);
  database = new Database(':memory:');
  database.pragma('foreign_keys = ON');
  for (const step of steps.slice(0, -1)) database.exec(step.sql);
  database.exec(`
    INSERT INTO trainee (id, name, goal, experience, units, minor, created_at)
      VALUES ('t', 'Mira Holt', 'growth', 'experienced', 'kg', 1, 'then');
    INSERT INTO session (id, trainee_id, title, date, notes, pain_note, created_at)
      VALUES ('s', 't', 'Legs', '2026-03-04', '', '', 'then');
    INSERT INTO entry (id, session_id, ordinal, exercise, plan_sets, plan_reps, plan_load_kg)
      VALUES ('e', 's', 1, 'back-squat', 3, 8, 60);
    INSERT INTO entry (id, session_id, ordinal, exercise) VALUES ('bare', 's', 2, 'deadlift');`);
  database.transaction(() => database.exec(steps.at(-1)?.sql ?? '')).immediate();
});

const rowOf = (id: string) => {
  const row = database.prepare<[string], EntryRow>('SELECT * FROM entry WHERE id = ?').get(id);
  if (row === undefined) throw new Error(`no entry ${id}`);
  return row;
};

const withEquipment = (table: 'trainee' | 'session', id: string) => {
  const row = database.prepare<[string], EquipmentColumn>(`SELECT equipment FROM ${table} WHERE id = ?`).get(id);
  if (row === undefined) throw new Error(`no ${table} ${id}`);
  return row;
};

describe('a library brought to the shape that keeps sets one by one, and equipment', () => {
  it('reads an old plan as equal sets, and none where there was none', () => {
    const set = { reps: 8, loadKg: 60 };
    expect(planOf(rowOf('e'))).toEqual({ sets: [set, set, set] });
    expect(planOf(rowOf('bare'))).toBeUndefined();
  });

  it.each([
    [
      'sets that differ',
      { sets: [{ reps: 10, loadKg: 20 }, { reps: 15, loadKg: 12, tempo: '3-1-X-0' }, { reps: 20 }] },
    ],
    ['sets that are alike', { sets: [{ reps: 5 }, { reps: 5 }] }],
  ])('gives back %s', (_, plan) => {
    expect(planOf({ ...rowOf('bare'), ...planColumns(plan) })).toEqual(plan);
  });

  it('states no equipment for the trainees and sessions that were there', () => {
    expect(equipmentOfRow(withEquipment('trainee', 't'))).toEqual({});
    expect(equipmentOfRow(withEquipment('session', 's'))).toEqual({});
  });

  it.each<[Equipment]>([['barAndBench'], [['dumbbells', 'bench']], [[]]])(
    'gives back the equipment %j',
    (equipment) => {
      database.prepare('UPDATE session SET equipment = :equipment').run(equipmentColumn(equipment));
      expect(equipmentOfRow(withEquipment('session', 's'))).toEqual({ equipment });
    },
  );

  it('refuses lists that are none', () => {
    expect(() => database.exec("UPDATE entry SET plan_list = 'ten' WHERE id = 'e'")).toThrow(/constraint/i);
    expect(() => database.exec("UPDATE trainee SET equipment = 'a gym' WHERE id = 't'")).toThrow(/constraint/i);
    expect(() => database.exec("UPDATE session SET equipment = 'a gym' WHERE id = 's'")).toThrow(/constraint/i);
  });
});
