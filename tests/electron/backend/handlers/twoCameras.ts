import { mkdtempSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { execa } from 'execa';
import { openBackend } from '../../../../electron/backend/backend.ts';
import { findMediaTools } from '../../../../electron/backend/media/tools/mediaTools.ts';
import { appFolder, ask, backendOn, copyOf, sessionWithClips, squatFile } from '../workbench.ts';

const rateHz = 16_000;

/** Bursts of noise at no rhythm, as one channel of a WAV file: what a room with plates sounds like. */
function roomSound(lastS: number): Buffer {
  let state = 12_345;
  const next = () => {
    state = (state * 48_271) % 2_147_483_647;
    return state / 2_147_483_647;
  };
  const samples = new Int16Array(lastS * rateHz);
  for (let atS = 0.4; atS < lastS; atS += 0.3 + 1.2 * next()) {
    for (let i = 0; i < 0.12 * rateHz && atS * rateHz + i < samples.length; i += 1) {
      samples[Math.round(atS * rateHz) + i] = 20_000 * (next() - 0.5) * Math.exp(-i / (0.03 * rateHz));
    }
  }
  const head = Buffer.alloc(44);
  head.write('RIFF', 0);
  head.writeUInt32LE(36 + samples.byteLength, 4);
  head.write('WAVEfmt ', 8);
  head.writeUInt32LE(16, 16);
  head.writeUInt16LE(1, 20);
  head.writeUInt16LE(1, 22);
  head.writeUInt32LE(rateHz, 24);
  head.writeUInt32LE(rateHz * 2, 28);
  head.writeUInt16LE(2, 32);
  head.writeUInt16LE(16, 34);
  head.write('data', 36);
  head.writeUInt32LE(samples.byteLength, 40);
  return Buffer.concat([head, Buffer.from(samples.buffer)]);
}

/** How much later the second camera was started. */
export const laterByS = 1;

/**
 * The squat of the footage as two phones would have it: the first with a room's sound, the second started a second later and smaller;
 * with or without sound. At thirty frames a second, a frame of the second is thirty before its twin of the first.
 */
async function filmedTwice(folder: string, sound: 'heard' | 'silent'): Promise<readonly [string, string]> {
  const { ffmpeg } = await findMediaTools();
  const wav = path.join(folder, 'room.wav');
  writeFileSync(wav, roomSound(20));
  const side = path.join(folder, 'side.mp4');
  const front = path.join(folder, 'front.mp4');
  const track = sound === 'heard' ? ['-map', '1:a', '-c:a', 'aac', '-shortest'] : [];
  await execa(ffmpeg.path, ['-v', 'error', '-i', squatFile, '-i', wav, '-map', '0:v', '-c:v', 'copy', ...track, side]);
  await execa(ffmpeg.path, [
    ...[
      '-v',
      'error',
      '-i',
      side,
      '-ss',
      String(laterByS),
      '-vf',
      'scale=160:-2',
      '-c:v',
      'libx264',
      '-preset',
      'ultrafast',
    ],
    ...['-c:a', 'aac', '-b:a', '48k', front],
  ]);
  return [side, front];
}

/** A closed library in a folder, with one exercise whose set was filmed by two cameras; to be copied. */
export async function filmedLibrary(folder: string, sound: 'heard' | 'silent') {
  const files = await filmedTwice(mkdtempSync(path.join(folder, 'filmed-')), sound);
  const library = path.join(folder, sound);
  const backend = openBackend({ libraryFolder: library, appFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  const session = await sessionWithClips(backend, files);
  await backend.close();
  return { folder: library, ...session };
}

/** A copy of such a library, open. */
export function twoCameras({ folder: original, ...session }: Awaited<ReturnType<typeof filmedLibrary>>) {
  const folder = copyOf(original);
  const backend = backendOn(folder);
  const [leadId = '', clipId = ''] = session.clipIds;
  const clips = async () => {
    const { review } = await ask(backend, 'review.get', { sessionId: session.sessionId });
    return review.entries.flatMap((entry) => entry.clips);
  };
  /** The frames where a clip's reps start. */
  const starts = async (id: string): Promise<number[]> =>
    (await clips())
      .filter((clip) => clip.id === id)
      .flatMap(({ reps }) => reps.map(({ start }) => ('frame' in start ? start.frame : -1)));
  return { ...session, backend, folder, leadId, clipId, clips, starts };
}
