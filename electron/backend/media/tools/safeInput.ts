import path from 'node:path';

/** Demuxers of real video containers: playlists, scripts, pictures and text are not among them. */
const demuxers = 'mov,matroska,avi,mpegts,mpeg,asf,flv,ogg';

/** A picture as large as decoders take has fewer bytes. */
const largestBlockBytes = 1024 ** 3;

/**
 * Options to put before an input. The `file:` address with an absolute path keeps a name from being read as an
 * option or as another protocol; the two lists keep a hostile file from opening anything else, and the limit of one
 * piece of memory holds where the system sets none.
 */
export const safeInputOptions: readonly string[] = [
  ...['-max_alloc', String(largestBlockBytes)],
  ...['-protocol_whitelist', 'file,pipe', '-format_whitelist', demuxers],
];

/** The address of a file for ffmpeg and ffprobe. */
export function fileAddress(file: string): string {
  return `file:${path.resolve(file)}`;
}
