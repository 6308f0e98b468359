import { type CaptionCue, captionAt } from './captions.ts';
import type { Look, NarrationTrack } from './narration.ts';
import { shownAt } from './shownAt.ts';

/** Pictures a second. */
type Rate = { readonly numerator: number; readonly denominator: number };

/** What one picture of the made film shows. */
export type NarrationShot = { readonly frame: number; readonly look: Look; readonly flagIds: readonly string[] };

/** How many pictures a narration has at a constant rate. */
export const narrationShotCount = ({ lastsUs }: NarrationTrack, { numerator, denominator }: Rate): number =>
  Math.max(1, Math.round((lastsUs * numerator) / denominator / 1_000_000));

/**
 * The pictures of a narration at a constant rate: each shows what was on screen at the middle of its time, so that none is off by more than
 * half of that time.
 */
export function* narrationShots(
  track: NarrationTrack,
  rate: Rate,
  cues: readonly CaptionCue[],
): Generator<NarrationShot, void, void> {
  const count = narrationShotCount(track, rate);
  for (let shot = 0; shot < count; shot += 1) {
    const atUs = Math.floor(((shot + 0.5) * rate.denominator * 1_000_000) / rate.numerator);
    yield { ...shownAt(track, atUs), flagIds: captionAt(cues, atUs) };
  }
}

/** Pictures that are decoded in one go: in their order as they come, or all at once and then shown in theirs. */
export type DecodeStretch = { readonly decode: 'inOrder' | 'atOnce'; readonly frames: readonly number[] };

/** What may be held at once. */
const mostHeld = 24;
/** A leap over more frames is dearer to decode through than to begin anew. */
const mostBetween = 120;

/**
 * Divides the frames that a film shows, one after the other, into stretches that decode well: what rises is read as it comes; what goes
 * to and fro is read some frames at a time. The stretches' frames in their order are the frames given, each repetition in a row left out.
 */
export function decodeStretches(shown: Iterable<number>): readonly DecodeStretch[] {
  const runs: number[][] = [];
  for (const frame of shown) {
    const run = runs.at(-1);
    const last = run?.at(-1);
    if (last === frame) continue;
    if (run !== undefined && last !== undefined && frame > last && frame - last <= mostBetween) run.push(frame);
    else runs.push([frame]);
  }
  const stretches: { decode: 'inOrder' | 'atOnce'; frames: number[] }[] = [];
  for (const run of runs) {
    const last = stretches.at(-1);
    const joined = last === undefined ? run : [...last.frames, ...run];
    if (last !== undefined && fitsAtOnce(joined) && last.frames.length <= mostHeld) {
      last.frames.push(...run);
      last.decode = 'atOnce';
    } else stretches.push({ decode: 'inOrder', frames: [...run] });
  }
  return stretches;
}

/** Whether frames lie near each other and are few. */
function fitsAtOnce(frames: readonly number[]): boolean {
  if (frames.length > 2 * mostHeld) return false;
  const distinct = new Set(frames);
  if (distinct.size > mostHeld) return false;
  return Math.max(...distinct) - Math.min(...distinct) <= mostBetween;
}
