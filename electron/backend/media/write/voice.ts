import { randomUUID } from 'node:crypto';
import { open, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { ProblemError } from '../../../contract/reply.ts';
import { makeSoundtrack, soundtrackFormat } from '../read/soundtrack.ts';
import type { MediaTools } from '../tools/mediaTools.ts';
import { shownName } from '../tools/refuse.ts';
import { fileAddress } from '../tools/safeInput.ts';
import { writeWholeFile } from '../tools/writeWholeFile.ts';
import { feedFfmpeg } from './feedFfmpeg.ts';

/** A file with sound, and how long it lasted by the clock of whoever recorded it, in microseconds. */
export type RecordedPart = { readonly file: string; readonly lastsUs: number };

/** What a sound file has in place of frame times: it begins at 0. */
const fromZero = { timeBase: { numerator: 1, denominator: 1 }, ticks: [0], endTicks: 1 };

/**
 * Joins recordings to one Opus sound in WebM that can be sought in: each begins where the one before should have ended, whether
 * its file holds less or more; what is missing is silent. Whole or not at all. Throws `cancelled`, `disk`, or `bad-media`.
 */
export async function joinVoice(tools: MediaTools, parts: readonly RecordedPart[], output: string): Promise<void> {
  await writeWholeFile(output, { kind: 'webm' }, async (unfinished) => {
    try {
      await feedFfmpeg(tools, { args: encoding(unfinished), frames: samplesOf(tools, parts, path.dirname(output)) });
    } catch (error) {
      if (error instanceof ProblemError) throw error;
      throw new ProblemError('bad-media', 'voiceNotEncoded', { file: shownName(output) }, { cause: error });
    }
    return 'whole';
  });
}

function encoding(file: string): readonly string[] {
  const { sampleRate, channels, format } = soundtrackFormat;
  return [
    ...['-f', format, '-ar', String(sampleRate), '-ac', String(channels), '-i', 'pipe:0'],
    ...['-ac', '1', '-c:a', 'libopus', '-b:a', '48k', '-map_metadata', '-1'],
    ...['-fflags', '+bitexact', '-flags:a', '+bitexact', '-f', 'webm', '-y', fileAddress(file)],
  ];
}

const blockBytes = 1 << 18;

/** The samples of all parts, one after the other; each part is read by way of a file in `folder`. */
async function* samplesOf(
  tools: MediaTools,
  parts: readonly RecordedPart[],
  folder: string,
): AsyncGenerator<Uint8Array, void, void> {
  for (const { file, lastsUs } of parts) {
    const raw = path.join(folder, `.unfinished-${randomUUID()}.raw`);
    try {
      await makeVoiceTrack(tools, { file, lastsUs }, raw);
      yield* bytesOf(raw);
    } finally {
      await rm(raw, { force: true });
    }
  }
}

async function* bytesOf(file: string): AsyncGenerator<Uint8Array, void, void> {
  const { size } = await stat(file);
  const handle = await open(file, 'r');
  try {
    for (let from = 0; from < size; ) {
      const block = new Uint8Array(Math.min(blockBytes, size - from));
      const { bytesRead } = await handle.read(block, 0, block.length, from);
      if (bytesRead === 0) return;
      from += bytesRead;
      yield block.subarray(0, bytesRead);
    }
  } finally {
    await handle.close();
  }
}

/** Writes a sound's raw samples for `encodeVideo`, exactly as long as said. */
export const makeVoiceTrack = (
  tools: MediaTools,
  { file, lastsUs }: RecordedPart,
  output: string,
  signal?: AbortSignal,
): Promise<void> => makeSoundtrack(tools, file, output, { table: fromZero, pieces: [{ fromUs: 0, lastsUs }], signal });
