import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';

const root = path.resolve(import.meta.dirname, '../..');

/** The rows of the guide's table: number, item, and the tests that hold it, each as `file`: “title”. */
const rows = readFileSync(path.join(root, 'tests/trust/FIGURES.md'), 'utf8')
  .split('\n')
  .map((line) => /^\| (\d+) \| ([^|]+) \| ([^|]+) \|$/.exec(line))
  .filter((found) => found !== null)
  .map(([, number = '', , tests = '']) => ({
    number: Number(number),
    tests: [...tests.matchAll(/`([^`]+)`: “([^”]+)”/g)].map(([, file = '', title = '']) => ({ file, title })),
  }));

it('every item of Electron’s security checklist is named in the guide, in its order', () => {
  expect(rows.map(({ number }) => number)).toEqual(Array.from({ length: 20 }, (_, index) => index + 1));
});

it('each of them has a test, and each test that is named is there', () => {
  for (const { number, tests } of rows) {
    expect(tests, `item ${number}`).not.toEqual([]);
    for (const { file, title } of tests) {
      expect(readFileSync(path.join(root, file), 'utf8'), `item ${number}, ${file}`).toContain(title);
    }
  }
});
