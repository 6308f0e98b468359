import type { ClipProbe } from '../media/probe/probeClip.ts';
import type { MediaTools } from '../media/tools/mediaTools.ts';
import { makeFilmstrip, makePoster } from '../media/write/pictures.ts';

const filmstripHeightPx = 72;

/** Where a clip's pictures were written, and how many stand in the filmstrip. */
export type Pictures = { readonly poster: string; readonly filmstrip: string; readonly count: number };

/** Writes a clip's poster and filmstrip into the files given. */
export async function makePictures(
  tools: MediaTools,
  source: string,
  { facts }: ClipProbe,
  { poster, filmstrip, signal }: { readonly poster: string; readonly filmstrip: string; readonly signal: AbortSignal },
): Promise<Pictures> {
  // About one a second: enough to find one's way, few enough for a picture that decoders still take.
  const count = Math.min(60, Math.max(8, Math.round(facts.durationUs / 1_000_000)));
  await makePoster(tools, source, poster, { atUs: Math.floor(facts.durationUs / 2), signal });
  const { durationUs } = facts;
  await makeFilmstrip(tools, source, filmstrip, { pictures: count, heightPx: filmstripHeightPx, durationUs, signal });
  return { poster, filmstrip, count };
}
