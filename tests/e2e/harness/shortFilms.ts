import { execFile } from 'node:child_process';
import { appendFile, copyFile, mkdir, utimes } from 'node:fs/promises';
import path from 'node:path';
import { promisify } from 'node:util';
import { findMediaTools } from '../../../electron/backend/media/tools/mediaTools.ts';
import { footage } from './oneClip.ts';

/** A film as a phone would have saved it: in which folder, under which name, and when. */
type Film = { readonly folder: string; readonly name: string; readonly at: string };

/** Writes films of a second each, every one of its own content: the same pictures with another note behind them. */
export async function putShortFilms(root: string, films: readonly Film[]): Promise<void> {
  const { ffmpeg } = await findMediaTools();
  await mkdir(root, { recursive: true });
  const short = path.join(root, '.short.mp4');
  await promisify(execFile)(ffmpeg.path, ['-v', 'error', '-i', footage.squat, '-t', '1', '-an', '-c', 'copy', short]);
  for (const [index, { folder, name, at }] of films.entries()) {
    const file = path.join(root, folder, name);
    await mkdir(path.dirname(file), { recursive: true });
    await copyFile(short, file);
    // A box of an MP4 that players pass over: its length, its kind, and four bytes of its own.
    const box = Buffer.alloc(12);
    box.writeUInt32BE(12, 0);
    box.write('free', 4);
    box.writeUInt32BE(index + 1, 8);
    await appendFile(file, box);
    await utimes(file, new Date(at), new Date(at));
  }
}
