import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { rootFolder, run } from '../runCommand.ts';

const clips = [
  ['seeds/footage/squat-side.mp4', 'squat-side'],
  ['seeds/footage/hinge-side.mp4', 'hinge-side'],
  ['seeds/footage/press-portrait.mov', 'press-portrait'],
  ['tests/footage/split-squat-turned.mp4', 'split-squat-turned'],
  ['tests/footage/squat-variable-rate.mp4', 'squat-variable-rate'],
  ['tests/footage/squat-low-light.mp4', 'squat-low-light'],
  ['tests/footage/hinge-hevc.mp4', 'hinge-hevc'],
] as const;

describe('probe against what is known of each clip', () => {
  it.each(clips)('%s', async (file, name) => {
    const truth = JSON.parse(await readFile(path.join(rootFolder, 'tests/footage', `${name}.truth.json`), 'utf8'));
    const { code, stdout } = await run(['probe', file, '--json']);
    const answer = JSON.parse(stdout);
    expect(code).toBe(0);
    expect(answer.frames).toBe(truth.video.frames);
    expect(answer.times).toEqual(truth.pts);
    expect(answer.rotationDeg).toBe(truth.video.display_rotation_cw_deg);
    expect([answer.displayWidth, answer.displayHeight]).toEqual(truth.video.display_size);
    expect([answer.width, answer.height]).toEqual(truth.video.coded_size);
    expect(answer.constantRate).toBe(!truth.video.vfr);
  });
});
