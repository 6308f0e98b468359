import { mkdtemp, readFile, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { run } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-grade-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

// Calibration vignettes: common practice, no source.
describe('grade on a hand-written review', () => {
  it.each([
    ['a clean set, all looked at', [], ['A+']],
    [
      'a head preference on every rep, else clean',
      [{ criterion: 'headPosition', severity: 'prefer', reps: 'set' as const }],
      ['A+'],
    ],
    [
      'quick eccentrics on every rep and no pause stretched',
      [
        { criterion: 'eccentricTempo', severity: 'adjust', reps: [1, 2, 3, 4, 5] },
        { criterion: 'pauses', severity: 'prefer', reps: [1, 2, 3, 4, 5] },
      ],
      ['A-'],
    ],
    [
      'every rep well short of depth',
      [{ criterion: 'depth', severity: 'correct', reps: [1, 2, 3, 4, 5], fault: 'shortOfDepth' }],
      ['C'],
    ],
    ['one rep in five short', [{ criterion: 'depth', severity: 'correct', reps: [3] }], ['A-', 'A']],
    [
      'an unsafe set-up once, else clean',
      [{ criterion: 'spinePosition', severity: 'stop', reps: [1] }],
      ['D+', 'D', 'D-', 'F'],
    ],
  ])('%s', async (_name, flags, letters) => {
    const file = await writeJson(folder, 'session.json', squatReview(flags));
    const { code, stdout } = await run(['grade', file, '--json']);
    expect(code).toBe(0);
    const { entries } = JSON.parse(stdout);
    expect(entries[0].state.kind).toBe('graded');
    expect(letters).toContain(entries[0].state.mark.letter);
  });

  it('prints the letter, the range and what would raise it for a person', async () => {
    const file = await writeJson(
      folder,
      'session.json',
      squatReview([{ criterion: 'depth', severity: 'correct', reps: [3] }]),
    );
    const { code, stdout, stderr } = await run(['grade', file]);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/Session +A-? /);
    expect(stdout).toContain('Lies between');
    expect(stdout).toContain('What would raise it');
  });

  it('is provisional when only half was looked at, and says so', async () => {
    const review = squatReview([]);
    const [entry] = review.entries as { ticks: unknown[] }[];
    entry?.ticks.splice(2);
    const file = await writeJson(folder, 'session.json', review);
    const { stdout } = await run(['grade', file, '--json']);
    expect(JSON.parse(stdout).entries[0].state.kind).toBe('provisional');
  });
});

describe('documents under another rubric', () => {
  const documents = ['letter', 'sheet'];
  it.each(documents)(
    'the %s names the version it was asked to judge by, and the file stays as it is',
    async (document) => {
      const file = await writeJson(folder, 'session.json', squatReview([]));
      const before = await readFile(file, 'utf8');
      const { code, stdout } = await run([document, file, '--rubric', '2']);
      expect(code).toBe(0);
      expect(stdout).toContain('version 2');
      expect(await readFile(file, 'utf8')).toBe(before);
    },
  );

  it('are not written under a rubric that there is not', async () => {
    const file = await writeJson(folder, 'session.json', squatReview([]));
    const { code, stdout, stderr } = await run(['letter', file, '--rubric', '99']);
    expect([code, stdout]).toEqual([1, '']);
    expect(stderr).toContain('There is no rubric 99');
  });
});
