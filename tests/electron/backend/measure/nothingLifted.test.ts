import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { measureRecording } from '../../../bench/truth/measureTrueClip.ts';
import { ffmpeg, findClip } from '../media/clips.ts';
import { clipWithoutReps, recordFilm } from './trueFilm.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-nothing-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const squat = findClip('squat-side');
const walkOut = findClip('squat-walk-out');
const still = findClip('barbell-squat-rear34');
/** Its figure un-racks until 1.0 s, steps back until 2.75 s, lifts, and steps forward from 11.6 s (its truth file). */
const beforeTheSet = ['-t', '3.2', '-i', walkOut];
const afterTheSet = ['-ss', '11.2', '-i', walkOut];
const crowd =
  '[0:v]fps=15,crop=300:360:170:0[a];[1:v]fps=15,crop=300:360:170:0[b];[0:v]fps=15,hflip,crop=300:360:170:0[c];[a][b][c]hstack=inputs=3';

// Lifts that begin down, that begin up, with a bar and without.
const exercises = ['back-squat', 'deadlift', 'overhead-press', 'bodyweight-squat', 'push-up', 'pull-up', 'sit-up'];

describe('where nothing is lifted, no exercise has a rep:', () => {
  it.each([
    ['an empty room', ['-t', '4', '-i', squat, '-vf', 'fps=15,crop=240:480:0:0']],
    ['total black', ['-f', 'lavfi', '-i', 'color=black:s=640x360:r=15', '-t', '4']],
    ['three frames', ['-i', still, '-frames:v', '3']],
    ['somebody who un-racks and walks out', [...beforeTheSet, '-vf', 'fps=15']],
    ['several people who walk about', [...beforeTheSet, ...afterTheSet, '-t', '2.7', '-filter_complex', crowd]],
  ])('%s', async (name, args) => {
    const file = path.join(folder, `${name}.mp4`);
    await ffmpeg(...args, '-c:v', 'libx264', '-pix_fmt', 'yuv420p', '-an', file);
    const { probe, recording } = await recordFilm(file);
    for (const exercise of exercises) {
      const { measurement } = measureRecording(clipWithoutReps(file, exercise), probe, recording);
      expect({ exercise, reps: measurement.reps }).toEqual({ exercise, reps: [] });
    }
  });
});
