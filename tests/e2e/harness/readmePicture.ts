import { execFile } from 'node:child_process';
import { stat } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import ffmpeg from '@ffmpeg-installer/ffmpeg';
import { rootFolder } from '../../../electron/launch/folders.ts';

const mostBytes = 300_000;

/** Puts a picture where the README shows it, in 256 colours. */
export async function keepForReadme(picture: string, name: 'review' | 'measures' | 'letter' | 'phone'): Promise<void> {
  const kept = path.join(rootFolder, 'renderer', 'pictures', `${name}.png`);
  const palette = 'split[whole][seen];[seen]palettegen[colours];[whole][colours]paletteuse=dither=none';
  await promisify(execFile)(ffmpeg.path, ['-v', 'error', '-y', '-i', picture, '-lavfi', palette, kept]);
  const { size } = await stat(kept);
  if (size > mostBytes) throw new Error(`${name}.png has ${size} bytes; it should stay under ${mostBytes}.`);
}
