import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { fleissReviewers } from '../../../published/fleiss1971.ts';
import { run } from '../runCommand.ts';
import { squatReview, writeJson } from '../squatReview.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-agree-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

it('two reviews that differ on one of thirty moments agree on 29, and the moment is named', async () => {
  const mine = await writeJson(
    folder,
    'mine.json',
    squatReview([{ criterion: 'depth', severity: 'correct', reps: [3] }]),
  );
  const yours = await writeJson(
    folder,
    'yours.json',
    squatReview([{ criterion: 'depth', severity: 'prefer', reps: [3] }]),
  );
  const { code, stdout } = await run(['agree', mine, yours, '--json']);
  expect(code).toBe(0);
  const { overall, differences } = JSON.parse(stdout);
  expect(overall.moments).toBe(30);
  expect(overall.percent).toBeCloseTo(29 / 30, 12);
  expect(differences).toMatchObject([{ rep: 3, criterion: 'depth', first: { severity: 'correct' } }]);

  const words = await run(['agree', mine, yours]);
  expect(words.stdout).toContain('Furthest apart');
  expect(words.stdout).toMatch(/Back squat +a +3 +Depth +correct +prefer/);
});

it('tells each severity by itself: of thirty moments one correct against one prefer, none in both', async () => {
  const mine = await writeJson(folder, 'a.json', squatReview([{ criterion: 'depth', severity: 'correct', reps: [3] }]));
  const yours = await writeJson(folder, 'b.json', squatReview([{ criterion: 'depth', severity: 'prefer', reps: [3] }]));
  const { stdout } = await run(['agree', mine, yours]);
  // Same: 29 of 30; Wilson's interval by hand: (58 + 3.84 ± 1.96 √(3.84 + 120 · 0.9667 · 0.0333)) / 67.68.
  expect(stdout).toMatch(/^keep +29 +29 +29 +100 %? ?/m);
  expect(stdout).toMatch(/^prefer +0 +1 +0 +97 ?% \(83 ?% to 99 ?%\)/m);
  expect(stdout).toMatch(/^correct +1 +0 +0 +97 ?%/m);
});

it('three or more reviews have the published kappa of their moments (Fleiss 1971, Psychological Bulletin 76:378)', async () => {
  const files = await Promise.all(
    fleissReviewers.map((said, reviewer) =>
      writeJson(
        folder,
        `reviewer-${reviewer + 1}.json`,
        squatReview(
          said.flatMap((severity, rep) =>
            severity === 'keep' ? [] : [{ criterion: 'depth', severity, reps: [rep + 1] }],
          ),
          said.length,
        ),
      ),
    ),
  );
  const { code, stdout } = await run(['agree', ...files, '--json']);
  expect(code).toBe(0);
  const { reviews, perCriterion, perSeverity, pairs, differences, overall, notShared } = JSON.parse(stdout);
  expect(reviews).toEqual(files);
  const depth = perCriterion.find(({ criterion }: { criterion: string }) => criterion === 'depth');
  expect(depth.figures.moments).toBe(30);
  expect(depth.figures.fleiss.value).toBeCloseTo(0.430245, 6);
  expect(depth.figures.fleiss.z).toBeCloseTo(17.65, 2);
  expect(Object.keys(overall).sort()).toEqual(
    ['moments', 'unanimous', 'pairsAgree', 'fleiss', 'ordinalAlpha', 'intervalAlpha', 'intraclass'].sort(),
  );
  expect([overall.moments, notShared, pairs.length, differences.length]).toEqual([180, 0, 15, 25]);
  expect(perSeverity[4]).toMatchObject({ severity: 'stop', given: expect.any(Array), kappa: expect.any(Number) });

  const words = await run(['agree', ...files]);
  expect(words.stdout).toMatch(/^Depth +30 +17 % +56 % +0\.43 +17\.7 /m);
  expect(words.stdout).toMatch(/^1 and 2 +180 +\d+ % /m);
  expect(words.stdout).toMatch(/^Exercise +Clip +Rep +Criterion +1 +2 +3 +4 +5 +6$/m);
});

it('two who are a steady distance apart are told so, and a table of two crosswise moments that it is too small', async () => {
  const said = (name: string, [depth, pauses]: readonly [string, string]) =>
    writeJson(
      folder,
      name,
      squatReview(
        [
          { criterion: 'depth', severity: depth, reps: 'set' },
          { criterion: 'pauses', severity: pauses, reps: 'set' },
        ],
        0,
        [],
      ),
    );
  const [strict, mild] = [await said('strict.json', ['adjust', 'adjust']), await said('mild.json', ['keep', 'keep'])];
  const apart = await run(['agree', strict, mild]);
  // An adjust leaves 80 points: 20 apart on both moments, and no moment differs from the other.
  expect(apart.stdout).toContain('Scores: the second gives 20.0 points more on average.');
  expect(apart.stdout).toMatch(/^All .*no spread$/m);
  const [one, other] = [await said('one.json', ['adjust', 'keep']), await said('other.json', ['keep', 'adjust'])];
  expect((await run(['agree', one, other])).stdout).toMatch(/^All .*too few to tell$/m);
  const json = JSON.parse((await run(['agree', one, other, '--json'])).stdout);
  expect(json.overall.intraclass).toMatchObject({ kind: 'estimated', twoWayRandomSingle: { kind: 'tooFewToTell' } });
});

it('two reviews by different versions of the rubric are compared by that of the first', async () => {
  const shift = { severity: 'adjust', fault: 'hipsShift', reps: 'set' } as const;
  const older = await writeJson(folder, 'older.json', squatReview([{ criterion: 'spinePosition', ...shift }]));
  const newer = await writeJson(folder, 'newer.json', {
    ...squatReview([{ criterion: 'symmetry', ...shift }]),
    rubric: { id: 'rackside', version: 2 },
  });
  const { stdout } = await run(['agree', older, newer, '--json']);
  const { overall, differences } = JSON.parse(stdout);
  expect(overall).toMatchObject({ moments: 30, percent: 1 });
  expect(differences).toEqual([]);
});
