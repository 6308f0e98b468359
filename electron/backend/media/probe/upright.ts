import type { ClipFacts } from '../../../../engine/review/review.ts';
import type { ProbedStream } from './streams.ts';
import { readRatio } from './streams.ts';

export type PictureSize = { readonly width: number; readonly height: number };

/** The clockwise turn that shows a stream upright. ffprobe states the counter-clockwise angle of the display matrix. */
export function readRotationDeg(stream: ProbedStream): ClipFacts['rotationDeg'] {
  const stated = stream.side_data_list.find((data) => data.rotation !== undefined)?.rotation ?? 0;
  const quarters = Math.round(-stated / 90);
  const turns: readonly ClipFacts['rotationDeg'][] = [0, 90, 180, 270];
  return turns[((quarters % 4) + 4) % 4] ?? 0;
}

/** The size of the upright picture, for square pixels. */
export function uprightSize(facts: Pick<ClipFacts, 'width' | 'height' | 'rotationDeg'>): PictureSize {
  const sideways = facts.rotationDeg === 90 || facts.rotationDeg === 270;
  return sideways ? { width: facts.height, height: facts.width } : { width: facts.width, height: facts.height };
}

/** The size of the upright picture as it is shown, pixels that are not square widened. */
export function shownSize(stream: ProbedStream, facts: ClipFacts): PictureSize {
  const aspect = readRatio(stream.sample_aspect_ratio);
  const width = aspect === null ? facts.width : Math.round((facts.width * aspect.numerator) / aspect.denominator);
  return uprightSize({ width, height: facts.height, rotationDeg: facts.rotationDeg });
}
