import { execFile } from 'node:child_process';
import { stat } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import ffmpeg from '@ffmpeg-installer/ffmpeg';
import { rootFolder } from '../../../electron/launch/folders.ts';

const mostBytes = 300_000;

/** Puts a picture of the review where the README shows it, in 256 colours; only when RACKSIDE_PICTURES asks for it. */
export async function keepForReadme(picture: string): Promise<void> {
  if (process.env.RACKSIDE_PICTURES !== '1') return;
  const kept = path.join(rootFolder, 'renderer', 'pictures', 'review.png');
  const palette = 'split[whole][seen];[seen]palettegen[colours];[whole][colours]paletteuse=dither=none';
  await promisify(execFile)(ffmpeg.path, ['-v', 'error', '-y', '-i', picture, '-lavfi', palette, kept]);
  const { size } = await stat(kept);
  if (size > mostBytes) throw new Error(`The README's picture has ${size} bytes; it should stay under ${mostBytes}.`);
}
