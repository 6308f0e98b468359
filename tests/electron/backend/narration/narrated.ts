import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Backend } from '../../../../electron/contract/backend.ts';
import type { TrackPiece } from '../../../../engine/narration/narration.ts';
import { ffmpeg } from '../media/clips.ts';
import { ask } from '../workbench.ts';

/** What a microphone would give: a file of Opus in WebM, silent but for a tone from one second to another. */
export async function voiceFile(folder: string, name: string, lastsS: number, [fromS, toS]: [number, number]) {
  const file = path.join(folder, name);
  const tone = `aevalsrc='0.5*sin(2*PI*880*t)*between(t,${fromS},${toS})':s=48000:d=${lastsS}`;
  await ffmpeg('-f', 'lavfi', '-i', tone, '-c:a', 'libopus', '-b:a', '48k', file);
  return file;
}

/** Frames that are shown one after the other, each for as long as said, from a time on. */
export function shownFrames(frames: readonly number[], eachUs: number, fromUs = 0): TrackPiece {
  return {
    frames: frames.map((frame, index) => [fromUs + index * eachUs, frame]),
    looks: fromUs === 0 ? [{ atUs: 0, near: null, drawn: [], layers: [] }] : [],
    shapes: [],
  };
}

/** One part of a narration: a sound's file, cut into pieces as a recorder gives them. */
export type SpokenPart = { readonly file: string; readonly lastsUs: number; readonly shown: TrackPiece };

/** Records parts as the window does, from files in place of a microphone; nothing is kept yet. */
export async function record(backend: Backend, clipId: string, parts: readonly SpokenPart[]): Promise<string> {
  const { narrationId } = await ask(backend, 'narrations.begin', { clipId });
  const none: TrackPiece = { frames: [], looks: [], shapes: [] };
  for (const [part, { file, lastsUs, shown }] of parts.entries()) {
    const sound = new Uint8Array(readFileSync(file));
    const half = Math.floor(sound.length / 2);
    const of = { narrationId, part };
    await ask(backend, 'narrations.append', {
      ...of,
      partLastsUs: Math.floor(lastsUs / 2),
      sound: sound.slice(0, half),
      shown,
    });
    await ask(backend, 'narrations.append', { ...of, partLastsUs: lastsUs, sound: sound.slice(half), shown: none });
  }
  return narrationId;
}

/** The samples of a file's sound, a thousand a second, and how loud each is, 0-1. */
export async function loudness(file: string): Promise<readonly number[]> {
  const raw = await ffmpeg('-i', file, '-vn', '-ac', '1', '-ar', '8000', '-f', 's16le', '-');
  const samples = new Int16Array(raw.buffer.slice(raw.byteOffset, raw.byteOffset + raw.length));
  return Array.from(
    { length: Math.floor(samples.length / 8) },
    (_, millisecond) => Math.max(...samples.subarray(8 * millisecond, 8 * millisecond + 8).map(Math.abs)) / 32_768,
  );
}

/** The first and the last millisecond at which something is heard from a millisecond on, for as long as it goes on. */
export function heardFrom(levels: readonly number[], from: number): readonly [number, number] {
  const first = levels.findIndex((level, at) => at >= from && level > 0.2);
  let last = first;
  for (let at = first; at < levels.length && at - last < 50; at += 1) if ((levels[at] ?? 0) > 0.2) last = at;
  return [first, last];
}
