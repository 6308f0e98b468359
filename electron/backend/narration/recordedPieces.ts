import { mkdir, open, readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import {
  joinPieces,
  type NarrationTrack,
  type TrackPiece,
  trackPieceSchema,
} from '../../../engine/narration/narration.ts';
import { fileForOwner, folderForOwner } from '../files/ownerAlone.ts';
import type { RecordedPart } from '../media/write/voice.ts';

/** One piece of a narration, as it comes while somebody speaks. */
export type RecordedPiece = {
  readonly part: number;
  readonly partLastsUs: number;
  readonly sound: Uint8Array;
  readonly shown: TrackPiece;
};

const lineSchema = v.strictObject({
  part: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(999)),
  partLastsUs: v.pipe(v.number(), v.integer(), v.minValue(0)),
  shown: trackPieceSchema,
});
type Line = v.InferOutput<typeof lineSchema>;

const shownFile = 'shown.jsonl';
const soundFile = (part: number): string => `${part}.webm`;

/** Adds a piece to a folder; both its files are on disk afterwards. */
export async function addPiece(folder: string, { part, partLastsUs, sound, shown }: RecordedPiece): Promise<void> {
  await mkdir(folder, { recursive: true, mode: folderForOwner });
  if (sound.length > 0) await append(path.join(folder, soundFile(part)), sound);
  const line: Line = { part, partLastsUs, shown };
  await append(path.join(folder, shownFile), new TextEncoder().encode(`${JSON.stringify(line)}\n`));
}

async function append(file: string, bytes: Uint8Array): Promise<void> {
  const handle = await open(file, 'a', fileForOwner);
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** What a folder holds of a narration: its parts with sound, and the track; null where too little came for one. */
export async function readPieces(
  folder: string,
): Promise<{ readonly parts: readonly RecordedPart[]; readonly track: NarrationTrack } | null> {
  const text = await readFile(path.join(folder, shownFile), 'utf8').catch(() => '');
  const lines = text.split('\n').flatMap((line) => readLine(line) ?? []);
  const names = new Set(await readdir(folder).catch(() => []));
  const lasts = new Map<number, number>();
  for (const { part, partLastsUs } of lines) lasts.set(part, Math.max(lasts.get(part) ?? 0, partLastsUs));
  const parts = [...lasts]
    .sort(([one], [other]) => one - other)
    .map(([part, lastsUs]) => ({
      file: path.join(folder, soundFile(part)),
      lastsUs,
      there: names.has(soundFile(part)),
    }));
  if (!parts.some(({ there }) => there)) return null;
  const lastsUs = parts.reduce((sum, part) => sum + part.lastsUs, 0);
  const track = joinPieces(
    lines.map(({ shown }) => shown),
    lastsUs,
  );
  return track === null || lastsUs === 0 ? null : { parts, track };
}

/** A line as it was written; null for one that a crash cut off. */
function readLine(line: string): Line | null {
  if (line === '') return null;
  try {
    const parsed = v.safeParse(lineSchema, JSON.parse(line));
    return parsed.success ? parsed.output : null;
  } catch {
    return null;
  }
}
