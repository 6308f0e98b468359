import path from 'node:path';
import { expect, it } from 'vitest';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';

const appFolder = path.resolve(import.meta.dirname, '../../..');
const newest = loadCatalogue(appFolder, 3);

it.each([
  ['back-squat', 'Depth', 'Bar path'],
  ['box-squat', 'Depth', 'Bar path'],
  ['goblet-squat', 'Depth', 'Load path'],
  ['romanian-deadlift', 'Depth', 'Bar path'],
  ['dumbbell-romanian-deadlift', 'Depth', 'Load path'],
  ['leg-press', 'Depth', 'Load path'],
  ['bench-press', 'Range', 'Bar path'],
  ['dumbbell-bench-press', 'Range', 'Load path'],
  ['pulldown', 'Range', 'Load path'],
  ['pull-up', 'Range', 'Load path'],
])('on %s the criteria are called %s and %s', (exercise, depth, path) => {
  expect([criterionName(newest, 'depth', exercise), criterionName(newest, 'barPath', exercise)]).toEqual([depth, path]);
});

it('says so in German too, and leaves the names of the first two versions alone', () => {
  const german = translated(newest, 'de');
  expect(criterionName(german, 'depth', 'bench-press')).toBe('Bewegungsumfang');
  expect(criterionName(german, 'depth', 'back-squat')).toBe('Tiefe');
  for (const version of [1, 2]) {
    const catalogue = loadCatalogue(appFolder, version);
    expect(criterionName(catalogue, 'depth', 'bench-press')).toBe('Depth');
    expect(criterionName(catalogue, 'barPath', 'pulldown')).toBe('Bar path');
  }
});
