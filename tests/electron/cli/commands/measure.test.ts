import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { linesOf, rootFolder, run } from '../runCommand.ts';

const squat = 'seeds/footage/squat-side.mp4';
const quick = ['--exercise', 'back-squat', '--no-joints'];
let folder = '';

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-measure-'));
  await writeFile(path.join(folder, 'text.mp4'), 'This is a text, not a clip.\n');
});
afterAll(() => rm(folder, { recursive: true, force: true }));

type Span = { readonly startS: number; readonly endS: number };
type Answer = {
  readonly reps: readonly {
    readonly index: number;
    readonly startS: number;
    readonly phases: { readonly eccentric: Span; readonly concentric: Span };
  }[];
};

const measured = async (...args: readonly string[]) => {
  const { code, stdout, stderr } = await run(['measure', ...args, ...quick, '--json']);
  expect([code, stderr]).toEqual([0, '']);
  return JSON.parse(stdout);
};

describe('measure --json', () => {
  it('prints what the guide says, every number with its half-width beside it, near the truth of the clip', async () => {
    const answer: Answer = await measured(squat);
    const truth = JSON.parse(await readFile(path.join(rootFolder, 'tests/footage/squat-side.truth.json'), 'utf8'));
    expect(answer).toMatchObject({
      file: squat,
      clip: { frames: 423, realTimeFactor: 1, width: 854, height: 480, rotation: 0 },
      track: { frames: 423, lost: expect.any(Number), meanConfidence: expect.any(Number) },
      suggestions: expect.any(Array),
      warnings: expect.any(Array),
    });
    expect(answer).toHaveProperty('calibration');
    expect(answer).toHaveProperty('speedLossPct');
    expect(answer.reps.map(({ index }) => index)).toEqual([1, 2, 3]);
    for (const [place, rep] of answer.reps.entries()) {
      const { eccentric, concentric } = truth.reps[place].phases_s;
      expect(Math.abs(rep.phases.eccentric.startS - eccentric[0])).toBeLessThan(0.2);
      expect(Math.abs(rep.phases.concentric.endS - concentric[1])).toBeLessThan(0.2);
      for (const name of ['eccentricS', 'eccentricPlusMinusS', 'romM', 'romPlusMinusM', 'meanConcentricMps']) {
        expect(rep).toHaveProperty(name, expect.any(Number));
      }
      for (const name of ['peakConcentricMps', 'driftForwardM', 'driftBackM', 'driftBackPlusMinusM']) {
        expect(rep).toHaveProperty(name);
      }
      expect(Object.keys(rep.phases)).toEqual(['eccentric', 'longPause', 'concentric', 'shortPause']);
      expect(rep).not.toHaveProperty('joints');
    }
  });

  it('takes what a person says of the clip', async () => {
    const said = ['--disc', '441,112,57', '--at', '5', '--facing', 'right', '--camera', 'side', '--diameter', '0.45'];
    const answer = await measured(squat, ...said);
    expect(answer).toMatchObject({ facing: 'right' });
    expect(answer.reps).toHaveLength(3);
  });

  it('prints an array for several clips, does those it can, names the others, and ends with 1', async () => {
    const bad = path.join(folder, 'text.mp4');
    const { code, stdout, stderr } = await run(['measure', bad, squat, ...quick, '--json']);
    expect(code).toBe(1);
    const answers = JSON.parse(stdout);
    expect(answers).toEqual([
      { file: bad, error: expect.stringContaining('“text.mp4”') },
      expect.objectContaining({ file: squat }),
    ]);
    expect(answers[1].reps).toHaveLength(3);
    const lines = linesOf(stderr);
    expect(lines).toHaveLength(2);
    expect(lines[0]).toContain(answers[0].error);
    expect(lines[1]).toMatch(/^1 of 2 clips could not be measured \(".*text\.mp4"\); the others were\.$/);
  });
});

describe('measure for people', () => {
  it('prints a table of the reps', async () => {
    const { code, stdout, stderr } = await run(['measure', squat, ...quick]);
    expect([code, stderr]).toEqual([0, '']);
    expect(stdout).toMatch(/^seeds\/footage\/squat-side\.mp4: .*[Ss]quat, 3 reps\n/);
    expect(stdout).toMatch(/^View +can’t be told from the joints$/m);
    expect(stdout).toMatch(/^Rep +From +To +Eccentric s +Pause, stretched s +Concentric s/m);
    expect(stdout.match(/^ +[123] +\d+\.\d{3} .*±/gm)).toHaveLength(3);
  });

  it('explains itself', async () => {
    const { code, stdout } = await run(['measure', '--help']);
    expect(code).toBe(0);
    for (const word of [
      '--exercise',
      '--disc',
      '--at',
      '--facing',
      '--follow',
      '--camera',
      '--diameter',
      '--no-joints',
      'Example',
    ]) {
      expect(stdout).toContain(word);
    }
  });
});

describe('measure used wrongly', () => {
  it.each([
    [['measure', squat]],
    [['measure', '--exercise', 'back-squat']],
    [['measure', squat, ...quick, '--disc', 'here']],
    [['measure', squat, ...quick, '--disc', '10']],
    [['measure', squat, ...quick, '--disc', '10,20,1']],
    [['measure', squat, ...quick, '--disc', '10,20,30,40']],
    [['measure', squat, ...quick, '--disc-box', '10,20,30']],
    [['measure', squat, ...quick, '--disc-box', '30,20,10,40']],
    [['measure', squat, ...quick, '--disc-box', '10,20,30,40,50']],
    [['measure', squat, ...quick, '--disc-box', '10,20,30,40', '--disc', '20,30']],
    [['measure', squat, ...quick, '--lifter', 'me']],
    [['measure', squat, ...quick, '--lifter', '10']],
    [['measure', squat, ...quick, '--lifter', '10,20,30']],
    [['measure', squat, ...quick, '--at', '3']],
    [['measure', squat, ...quick, '--disc', '10,20', '--at', '1.5']],
    [['measure', squat, ...quick, '--follow', 'elbows']],
    [['measure', squat, ...quick, '--no-joints', '--follow', 'hands']],
    [['measure', squat, ...quick, '--facing', 'up']],
    [['measure', squat, ...quick, '--camera', 'above']],
    [['measure', squat, ...quick, '--diameter', '45']],
  ])('%j ends with 2 and one line', async (args) => {
    const { code, stdout, stderr } = await run(args);
    expect([code, stdout]).toEqual([2, '']);
    expect(linesOf(stderr)).toHaveLength(1);
  });

  it.each([
    ['an exercise nobody knows', ['measure', squat, '--exercise', 'moon-walk'], /no exercise "moon-walk"/],
    ['a missing clip', ['measure', 'nowhere.mp4', ...quick], /no file “nowhere\.mp4”/],
    ['a click beyond the clip', ['measure', squat, ...quick, '--disc', '9,9', '--at', '423'], /no frame 423/],
    [
      'a lifter beyond it',
      ['measure', squat, ...quick, '--lifter', '9,9', '--at', '423'],
      /no frame 423 to find the lifter/,
    ],
  ])('%s ends with 1 and one line', async (_, args, reason) => {
    const { code, stdout, stderr } = await run(args);
    expect([code, stdout]).toEqual([1, '']);
    expect(linesOf(stderr)).toHaveLength(1);
    expect(stderr).toMatch(reason);
  });
});
