import type Database from 'better-sqlite3';
import { expect } from 'vitest';

/** Every foreign key of some tables says what happens on deletion, and finds its rows by an index. */
export function expectIndexedKeys(database: Database.Database, tables: readonly string[]): void {
  for (const table of tables) {
    const keys = database
      .prepare('SELECT "from" AS name, on_delete AS onDelete FROM pragma_foreign_key_list(?)')
      .all(table) as { name: string; onDelete: string }[];
    expect(keys.length, table).toBeGreaterThan(0);
    for (const { name, onDelete } of keys) {
      expect(onDelete, `${table}.${name}`).not.toBe('NO ACTION');
      const plan = database.prepare(`EXPLAIN QUERY PLAN SELECT 1 FROM ${table} WHERE ${name} = 'x'`).all();
      expect(JSON.stringify(plan), `${table}.${name}`).toContain('SEARCH');
    }
  }
}
