import { mkdtemp, readFile, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { squatReview, writeJson } from './review.ts';
import { linesOf, rootFolder, run } from './run.ts';

let folder = '';
let harsher = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-rubric-'));
  const rubric = JSON.parse(await readFile(path.join(rootFolder, 'seeds/rubric/v1.json'), 'utf8'));
  harsher = await writeJson(folder, 'harsher.json', { ...rubric, version: 2, cost: { ...rubric.cost, adjust: 0.5 } });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

describe('rubrics side by side', () => {
  it('differ in what was changed, and in nothing else', async () => {
    const { stdout } = await run(['rubric', 'diff', '1', harsher, '--json']);
    expect(JSON.parse(stdout)).toEqual([
      { place: 'version', from: '1', to: '2' },
      { place: 'cost.adjust', from: '0.2', to: '0.5' },
    ]);
    expect((await run(['rubric', 'diff', '1', '1'])).stdout).toBe('They do not differ.\n');
  });

  it('grade the same review differently: half off every rep of the path is 50, by hand', async () => {
    const file = await writeJson(
      folder,
      's.json',
      squatReview([{ criterion: 'barPath', weight: 'adjust', reps: 'set' }]),
    );
    const pathScore = async (...more: string[]): Promise<number> => {
      const { stdout } = await run(['grade', file, '--json', ...more]);
      const { criteria } = JSON.parse(stdout).entries[0];
      return criteria.find((one: { criterion: string }) => one.criterion === 'barPath').score;
    };
    expect(await pathScore()).toBeCloseTo(80, 9);
    expect(await pathScore('--rubric', harsher)).toBeCloseTo(50, 9);
  });

  it('must be rubrics', async () => {
    const none = await writeJson(folder, 'none.json', { hello: 1 });
    for (const name of [none, path.join(folder, 'missing.json')]) {
      const { code, stderr } = await run(['rubric', 'diff', '1', name]);
      expect(code).toBe(1);
      expect(linesOf(stderr)).toHaveLength(1);
    }
  });
});
