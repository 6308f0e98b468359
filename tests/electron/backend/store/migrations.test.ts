import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { readMigrations } from '../../../../electron/backend/store/migrations.ts';
import { appFolder } from '../workbench.ts';

it('has a test of its own for every migration', () => {
  const untested = readMigrations(appFolder).filter(({ version, name }) => {
    const file = `${String(version).padStart(4, '0')}-${name}.test.ts`;
    return !existsSync(path.join(import.meta.dirname, 'migrations', file));
  });
  expect(untested).toEqual([]);
});

it('counts from 1 upwards without a gap and knows each step by its content', () => {
  const migrations = readMigrations(appFolder);
  expect(migrations.map((each) => each.version)).toEqual(migrations.map((_, index) => index + 1));
  const first = readFileSync(path.join(appFolder, 'migrations', '0001-library.sql'));
  expect(migrations[0]?.sha256).toBe(createHash('sha256').update(first).digest('hex'));
});
