import path from 'node:path';

const types: Readonly<Record<string, string>> = {
  '.mp4': 'video/mp4',
  '.m4v': 'video/mp4',
  // Players refuse "video/quicktime" even where they play what is inside.
  '.mov': 'video/mp4',
  '.webm': 'video/webm',
  '.mkv': 'video/x-matroska',
  '.avi': 'video/x-msvideo',
  '.jpg': 'image/jpeg',
};

/** The extensions that a clip's file keeps in the library; any other becomes `.video`. */
const clipExtensions = new Set(['.mp4', '.m4v', '.mov', '.webm', '.mkv', '.avi']);

/** What a file of a folder has to be called to be taken for a clip: the containers that phones and cameras write. */
const filmExtensions = new Set([
  ...clipExtensions,
  '.3gp',
  '.3g2',
  '.mts',
  '.m2ts',
  '.ts',
  '.mpg',
  '.mpeg',
  '.wmv',
  '.flv',
]);

/** Whether a file is a film, by its name. */
export const isFilm = (name: string): boolean => filmExtensions.has(path.extname(name).toLowerCase());

/** The media type of one of the library's files, by its name. */
export function mediaType(file: string): string {
  return types[path.extname(file).toLowerCase()] ?? 'application/octet-stream';
}

/** The extension under which the library keeps a clip that came with a name. */
export function clipExtension(name: string): string {
  const extension = path.extname(name).toLowerCase();
  return clipExtensions.has(extension) ? extension : '.video';
}
