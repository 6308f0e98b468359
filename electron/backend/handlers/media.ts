import { existsSync } from 'node:fs';
import path from 'node:path';
import { ProblemError } from '../../contract/reply.ts';
import { mediaType } from '../files/mediaType.ts';
import { findClip } from '../store/clips.ts';
import type { LibraryFolder } from '../store/folder.ts';
import { type FootageRow, footageOfClip } from '../store/footage.ts';
import type { Handler } from './handler.ts';

export const resolveMedia: Handler<'media.resolve'> = (context, { clipId, what }) => {
  const { reading, folder } = context.library();
  const clip = findClip(reading, clipId);
  const footage = footageOfClip(reading, clipId);
  const file = footage && fileFor(folder, footage, what);
  if (!file || !existsSync(file)) {
    throw new ProblemError('not-found', `The ${what} of "${clip.name}" is not in the library's folder.`);
  }
  return { path: file, type: mediaType(file) };
};

function fileFor(folder: LibraryFolder, footage: FootageRow, what: 'clip' | 'poster' | 'filmstrip'): string | null {
  switch (what) {
    case 'clip': {
      const name = footage.plays === 'proxy' ? footage.proxy_file : footage.file;
      return name && path.join(folder.clips, name);
    }
    case 'poster':
      return footage.poster_file && path.join(folder.pictures, footage.poster_file);
    case 'filmstrip':
      return footage.filmstrip_file && path.join(folder.pictures, footage.filmstrip_file);
  }
}
