import { mkdtemp, rm } from 'node:fs/promises';
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
      [{ criterion: 'headPosition', weight: 'prefer', reps: 'set' as const }],
      ['A+'],
    ],
    [
      'quick eccentrics on every rep and no long pause',
      [
        { criterion: 'eccentricTempo', weight: 'adjust', reps: [1, 2, 3, 4, 5] },
        { criterion: 'pauses', weight: 'prefer', reps: [1, 2, 3, 4, 5] },
      ],
      ['A-'],
    ],
    [
      'every rep well short of depth',
      [{ criterion: 'depth', weight: 'correct', reps: [1, 2, 3, 4, 5], fault: 'shortOfDepth' }],
      ['C'],
    ],
    ['one rep in five short', [{ criterion: 'depth', weight: 'correct', reps: [3] }], ['A-', 'A']],
    [
      'an unsafe set-up once, else clean',
      [{ criterion: 'spinePosition', weight: 'stop', reps: [1] }],
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
      squatReview([{ criterion: 'depth', weight: 'correct', reps: [3] }]),
    );
    const { code, stdout, stderr } = await run(['grade', file]);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/Session +A-? /);
    expect(stdout).toContain('Range');
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
