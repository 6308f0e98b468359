import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { makeSoundtrack, type SoundPiece } from '../../../../../electron/backend/media/read/soundtrack.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { ffmpeg } from '../clips.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-soundtrack-'));
afterAll(() => rmSync(folder, { recursive: true }));

const samplesASecond = 48_000;

/** Seconds from which and up to which the track is loud, to the hundredth. */
async function loudStretch(clip: string, pieces: readonly SoundPiece[]) {
  const tools = await findMediaTools();
  const { table } = await probeClip(tools, clip);
  const file = path.join(folder, 'track');
  await makeSoundtrack(tools, clip, file, { table, pieces });
  const bytes = readFileSync(file);
  const samples = bytes.length / 4;
  let [first, last] = [Number.NaN, Number.NaN];
  for (let sample = 0; sample < samples; sample += 1) {
    if (Math.abs(bytes.readInt16LE(4 * sample)) < 1_500) continue;
    if (Number.isNaN(first)) first = sample;
    last = sample;
  }
  return { lastsS: samples / samplesASecond, fromS: first / samplesASecond, toS: last / samplesASecond };
}

/** Two seconds of pictures, and a tone of one second that begins so much later. */
async function toneAfter(delayS: number): Promise<string> {
  const file = path.join(folder, `after ${delayS}.mp4`);
  await ffmpeg(
    ...['-f', 'lavfi', '-i', 'color=gray:s=64x64:r=30:d=2', '-itsoffset', String(delayS)],
    ...['-f', 'lavfi', '-i', 'sine=frequency=500:sample_rate=44100:duration=1', '-c:v', 'libx264', '-c:a', 'aac', file],
  );
  return file;
}

describe('a soundtrack', () => {
  it.each([0, 0.5])('has the sound where it lies beside the pictures, beginning at %d s', async (delayS) => {
    const { lastsS, fromS, toS } = await loudStretch(await toneAfter(delayS), [{ lastsUs: 2_000_000, fromUs: 0 }]);
    expect(lastsS).toBe(2);
    expect(Math.abs(fromS - delayS)).toBeLessThan(0.03);
    expect(Math.abs(toS - (delayS + 1))).toBeLessThan(0.05);
  });

  it('puts silence between stretches of it, and after its end', async () => {
    const { lastsS, fromS, toS } = await loudStretch(await toneAfter(0.5), [
      { lastsUs: 1_000_000, fromUs: null },
      { lastsUs: 500_000, fromUs: 750_000 },
      { lastsUs: 2_000_000, fromUs: 1_500_000 },
    ]);
    expect(lastsS).toBe(3.5);
    expect(Math.abs(fromS - 1)).toBeLessThan(0.01);
    expect(Math.abs(toS - 1.5)).toBeLessThan(0.05);
  });
});
