import type { Framing } from '../../../../engine/framing/framing.ts';
import { type SeenPart, seenPart, seenSize } from '../../../../engine/framing/picturePlaces.ts';
import type { PictureSize, UprightPicture } from '../probe/streams.ts';

/** Of how much of the upright picture, how bright, and whether as in a mirror. */
export type Look = Pick<Framing, 'crop' | 'mirrored' | 'brightness'>;

const turnFilters = { 0: [], 90: ['transpose=clock'], 180: ['hflip', 'vflip'], 270: ['transpose=cclock'] } as const;

/** Turns what the file shows as a coach wants it, on top of what the file says. */
export const turned = ({ turnDeg = 0 }: UprightPicture): readonly string[] => turnFilters[turnDeg];

/** Cuts a part out of the upright picture and holds it before a mirror. */
export function partSeen(shown: PictureSize, look: Look | undefined): readonly string[] {
  if (look === undefined) return [];
  const part = seenPart(shown, look);
  return [...(look.crop === null ? [] : cutOut(shown, part)), ...(look.mirrored ? ['hflip'] : [])];
}

function cutOut(shown: PictureSize, part: SeenPart): readonly string[] {
  const { width, height } = seenSize(part);
  // Places are those of square pixels.
  return [`scale=${shown.width}:${shown.height}:flags=bilinear`, `crop=${width}:${height}:${part.left}:${part.top}`];
}

/** Multiplies light and colour, as a screen's brightness does; in limited range. */
export function lightOf(look: Look | undefined): readonly string[] {
  if (look === undefined || look.brightness === 1) return [];
  const times = look.brightness.toFixed(4);
  const chroma = `clip((val-128)*${times}+128\\,16\\,240)`;
  return [`lutyuv=y=clip((val-16)*${times}+16\\,16\\,235):u=${chroma}:v=${chroma}`];
}
