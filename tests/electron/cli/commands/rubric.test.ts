import { mkdtemp, readFile, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, rootFolder, run } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

let folder = '';
let harsher = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-rubric-'));
  const rubric = JSON.parse(await readFile(path.join(rootFolder, 'seeds/rubric/v1.json'), 'utf8'));
  harsher = await writeJson(folder, 'harsher.json', { ...rubric, version: 9, cost: { ...rubric.cost, adjust: 0.5 } });
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function withoutDepth(): Promise<object> {
  const rubric = JSON.parse(await readFile(path.join(rootFolder, 'seeds/rubric/v1.json'), 'utf8'));
  return { ...rubric, criteria: rubric.criteria.filter((one: { id: string }) => one.id !== 'depth') };
}

describe('rubrics side by side', () => {
  it('differ in what was changed, and in nothing else', async () => {
    const { stdout } = await run(['rubric', 'diff', '1', harsher, '--json']);
    expect(JSON.parse(stdout)).toEqual([
      { place: 'version', from: '1', to: '9' },
      { place: 'cost.adjust', from: '0.2', to: '0.5' },
    ]);
    expect((await run(['rubric', 'diff', '1', '1'])).stdout).toBe('No differences.\n');
  });

  it('grade the same review differently: half off every rep of the path is 50, by hand', async () => {
    const file = await writeJson(
      folder,
      's.json',
      squatReview([{ criterion: 'barPath', severity: 'adjust', reps: 'set' }]),
    );
    const pathScore = async (...more: string[]): Promise<number> => {
      const { stdout } = await run(['grade', file, '--json', ...more]);
      const { criteria } = JSON.parse(stdout).entries[0];
      return criteria.find((one: { criterion: string }) => one.criterion === 'barPath').score;
    };
    expect(await pathScore()).toBeCloseTo(80, 9);
    expect(await pathScore('--rubric', harsher)).toBeCloseTo(50, 9);
  });

  it('ship as versions that can be shown and compared by number', async () => {
    const shown = await run(['rubric', 'show', '--json']);
    expect(JSON.parse(shown.stdout).version).toBe(3);
    expect((await run(['rubric', 'show', '--version', '1'])).stdout).toMatch(/^Rackside rubric, version 1\n/);
    const { stdout } = await run(['rubric', 'diff', '1', '2', '--json']);
    expect(JSON.parse(stdout)).toContainEqual({ place: 'criteria.gaze.partOf', from: null, to: 'headPosition' });
  });

  it('tell how version 3 puts scores together, and what is new in it', async () => {
    const { stdout } = await run(['rubric', 'diff', '2', '3', '--json']);
    const changes = JSON.parse(stdout);
    for (const change of [
      { place: 'lookedAt', from: null, to: 'cell' },
      { place: 'lowestShare', from: '0.25', to: null },
      { place: 'programmeCost.adjust', from: null, to: '2.5' },
      { place: 'stopCap.session', from: '79', to: '69' },
    ]) {
      expect(changes).toContainEqual(change);
    }
    const shown = (await run(['rubric', 'show', '--version', '3'])).stdout;
    expect(shown).toMatch(/Session +technique, less 1 \(prefer\), 2\.5 \(adjust\), 6 \(correct\)/);
    expect(shown).toMatch(/Looked at +each rep of a criterion by itself/);
  });

  it('judge a review by the version it names, by the first without one, and by another on request', async () => {
    const plain = squatReview([{ criterion: 'spinePosition', severity: 'adjust', fault: 'hipsShift', reps: 'set' }]);
    const finer = squatReview([{ criterion: 'symmetry', severity: 'adjust', fault: 'hipsShift', reps: 'set' }]);
    const graded = async (review: object, ...more: string[]) => {
      const { code, stdout, stderr } = await run([
        'grade',
        await writeJson(folder, 'v.json', review),
        '--json',
        ...more,
      ]);
      if (code !== 0) return stderr.trim();
      const { rubric, entries } = JSON.parse(stdout);
      const looked = entries[0].criteria.filter((one: { score: number | null }) => one.score === 80);
      return [rubric.version, ...looked.map((one: { criterion: string }) => one.criterion)];
    };
    const second = { rubric: { id: 'rackside', version: 2 } };
    expect(await graded(plain)).toEqual([1, 'spinePosition']);
    expect(await graded(plain, '--rubric', '2')).toEqual([2, 'symmetry']);
    expect(await graded({ ...finer, ...second })).toEqual([2, 'symmetry']);
    expect(await graded({ ...finer, ...second }, '--rubric', '1')).toEqual([1, 'spinePosition']);
    expect(await graded(finer)).toMatch(/symmetry/);
    expect(await graded({ ...plain, rubric: { id: 'rackside', version: 7 } })).toContain(
      'version 7, but only "rackside" versions 1, 2 and 3 are here.',
    );
  });

  it('must be rubrics', async () => {
    const none = await writeJson(folder, 'none.json', { hello: 1 });
    const session = await writeJson(folder, 'session.json', squatReview([]));
    const half = await writeJson(folder, 'half.json', await withoutDepth());
    const refused = await run(['grade', session, '--rubric', half]);
    expect(refused.code).toBe(1);
    expect(linesOf(refused.stderr)).toEqual([
      expect.stringMatching(/^This rubric can’t judge the exercise library .*depth/),
    ]);
    for (const name of [none, path.join(folder, 'missing.json')]) {
      const { code, stderr } = await run(['rubric', 'diff', '1', name]);
      expect(code).toBe(1);
      expect(linesOf(stderr)).toHaveLength(1);
    }
  });
});
