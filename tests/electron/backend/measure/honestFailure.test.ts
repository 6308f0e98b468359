import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { sayWarningToCoach } from '../../../../engine/wording/sayMeasuring.ts';
import { ffmpeg, findClip } from '../media/clips.ts';
import { measureClip } from './measuredClip.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-honest-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A clip made of another, or of a generator. */
async function made(name: string, ...args: readonly string[]): Promise<string> {
  const file = path.join(folder, `${name}.mp4`);
  await ffmpeg(...args, '-c:v', 'libx264', '-pix_fmt', 'yuv420p', '-an', file);
  return file;
}
const squat = findClip('squat-side');
const hinge = findClip('hinge-side');
const how = { exercise: 'back-squat', facing: 'right' } as const;

describe('what can’t be measured', () => {
  it.each([
    ['an empty room', 'empty', ['-i', squat, '-t', '6', '-vf', 'crop=240:480:0:0']],
    ['a person without a bar', 'bare', ['-i', hinge, '-t', '6', '-vf', 'crop=854:240:0:0']],
    ['a disc half out of the frame', 'half', ['-i', squat, '-t', '6', '-vf', 'crop=414:480:440:0']],
    ['total black', 'black', ['-f', 'lavfi', '-i', 'color=black:s=640x360:r=30', '-t', '4']],
  ])('%s has no reps, and a reason', async (_, name, args) => {
    const { measurement } = await measureClip(await made(name, ...args), how);
    expect(measurement.reps).toEqual([]);
    expect(measurement.warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/No disc was found/);
  });

  it('three frames have no reps, and a reason', async () => {
    const { measurement } = await measureClip(await made('three', '-i', squat, '-frames:v', '3'), how);
    expect(measurement.reps).toEqual([]);
    expect(measurement.warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(/3 frames, too few/);
  });

  it('ten frames a second have no reps that aren’t there, and say how exact they can be', async () => {
    const { measurement } = await measureClip(await made('slow', '-i', squat, '-r', '10'), how);
    expect(measurement.reps).toHaveLength(3);
    expect(measurement.warnings.map((one) => sayWarningToCoach(one, 'en')).join(' ')).toMatch(
      /about 10 frames a second/,
    );
    const truth = [1.6, 2.2, 1.2];
    measurement.reps.forEach(({ durationsS: { eccentric } }, index) => {
      expect(eccentric?.plusMinus).toBeGreaterThan(0.05);
      expect(Math.abs((eccentric?.value ?? 0) - (truth[index] ?? 0))).toBeLessThan(eccentric?.plusMinus ?? 0);
    });
  });
});

describe('a camera that isn’t on a tripod', () => {
  it('is steadied: drift and range as from the still one', async () => {
    const shake =
      "rotate='0.006*sin(2*PI*t*0.7)':bilinear=1,crop=800:440:'27+12*sin(2*PI*t*0.4)+3*sin(2*PI*t*1.7)':'20+9*sin(2*PI*t*0.53+1)'";
    const { disc, measurement } = await measureClip(await made('shaken', '-i', squat, '-vf', shake, '-crf', '18'), how);
    expect(disc?.camera).toMatchObject({ moves: true, removable: true });
    // Truth of the clip: range .404, .638, .580 m; furthest forward 3, 47, 3 mm.
    const truth = [
      [0.40429, 0.00301],
      [0.63839, 0.0466],
      [0.57962, 0.00339],
    ] as const;
    expect(measurement.reps).toHaveLength(3);
    measurement.reps.forEach(({ romM, driftForwardM }, index) => {
      const [rom = 0, forward = 0] = truth[index] ?? [];
      expect(Math.abs((romM?.value ?? 0) / rom - 1)).toBeLessThan(0.02);
      expect(Math.abs((driftForwardM?.value ?? 1) - forward)).toBeLessThan(0.008);
    });
  });

  it('is set upright by the room’s own posts when it is rolled', async () => {
    const { measurement } = await measureClip(
      await made('rolled', '-i', squat, '-vf', 'rotate=3*PI/180:bilinear=1,crop=780:420', '-crf', '18'),
      how,
    );
    expect(measurement.calibration?.rollDeg).toBeGreaterThan(2.7);
    expect(measurement.calibration?.rollDeg).toBeLessThan(3.3);
    const forward = measurement.reps.map(({ driftForwardM }) => driftForwardM?.value ?? 1);
    [0.00301, 0.0466, 0.00339].forEach((truth, index) => {
      expect(Math.abs((forward[index] ?? 1) - truth)).toBeLessThan(0.008);
    });
  });
});

describe('a click', () => {
  it('snaps to the disc and is followed both ways', async () => {
    // Truth: the disc's centre in frame 200 of the clip.
    const at = { xPx: 453, yPx: 273 };
    const { disc, measurement } = await measureClip(squat, { ...how, clicks: [{ frame: 200, what: 'disc', at }] });
    expect(disc?.frames.filter((place) => place === null)).toEqual([]);
    expect(measurement.reps).toHaveLength(3);
  });
});
