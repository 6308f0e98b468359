import { nearestIn } from '../../../../../engine/framing/section.ts';
import { isJudging } from '../../../../../engine/review/parts.ts';
import type { Clip } from '../../../../../engine/review/review.ts';
import { type Severity, severities } from '../../../../../engine/rubric/rubric.ts';
import type { FlagRow } from '../../../../../engine/sheet/flagRows.ts';
import { frameAtUs, frameEndUs, frameStartUs, timesOf } from '../../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../../engine/time/frameTable.ts';
import { type Moment, momentUs } from '../../../../../engine/time/moment.ts';
import { ProblemError } from '../../../../contract/reply.ts';
import { readPictureColours } from '../../../media/probe/pictureColours.ts';
import type { MediaTools } from '../../../media/tools/mediaTools.ts';
import { encodeVideo } from '../../../media/write/encodeVideo.ts';
import { openOverlay } from '../overlay/overlay.ts';
import {
  type ClipToShow,
  evenSizeWithin,
  framesOf,
  type PictureNote,
  type PictureWords,
  sizeSeenOf,
  wordsOfNote,
} from '../picture.ts';
import { composedFrames, outputRate } from './composedFrames.ts';
import { layOut, pictureUsAt } from './timeline.ts';

/** A rep to be shown as a loop, with the heaviest remark on it. */
export type RepToLoop = {
  readonly rep: number;
  readonly firstFrame: number;
  readonly lastFrame: number;
  readonly row: FlagRow;
};

const heaviness = (severity: Severity): number => severities.indexOf(severity);

/** A rep whose end nobody knows lasts till the next, and no longer than this. */
const longestUs = 10_000_000;

/** The flagged reps of a clip whose time is known, rising; praise and plain notes alone ask for no loop. */
export function repsToLoop(clip: Clip, rows: readonly FlagRow[], table: FrameTable): readonly RepToLoop[] {
  const at = (moment: Moment): number | null => momentUs(moment, timesOf(table));
  const reps = [...clip.reps].sort((one, other) => one.index - other.index);
  return reps.flatMap((rep, index) => {
    const [row] = rows
      .filter(isJudging)
      .filter(({ reps: of, severity }) => severity !== 'keep' && of?.includes(rep.index) === true)
      .sort((one, other) => heaviness(other.severity) - heaviness(one.severity));
    const startUs = at(rep.start);
    if (row === undefined || startUs === null) return [];
    const next = reps[index + 1];
    const nextUs = next === undefined ? null : at(next.start);
    const endUs = (rep.end && at(rep.end)) ?? Math.min(nextUs ?? Number.POSITIVE_INFINITY, startUs + longestUs);
    const [firstFrame, lastFrame] = [startUs, endUs].map((us) => frameAtUs(table, Math.round(us)));
    if (firstFrame === undefined || lastFrame === undefined || lastFrame <= firstFrame) return [];
    return [{ rep: rep.index, firstFrame, lastFrame, row }];
  });
}

export type RepLoopOptions = {
  /** First and last frame of the rep; a little is shown before and after. */
  readonly firstFrame: number;
  readonly lastFrame: number;
  /** The remark on it; its plate is up all through. */
  readonly note: PictureNote | null;
  readonly words: PictureWords;
  /** 1 = as filmed. */
  readonly speed?: number;
  /** 8 MB where nothing is said: what messengers and mail take. */
  readonly mostBytes?: number;
  readonly onProgress?: (share: number) => void;
  readonly signal?: AbortSignal | undefined;
};

const aroundUs = 300_000;
const sidesPx = [1280, 960, 720, 480, 320] as const;
/** Bits for each pixel of each picture: what looks good, and what is still worth looking at. */
const bitsPerPixel = { good: 0.12, least: 0.04 };
const shareOfRoom = 0.9;

/**
 * Writes one rep as a short MP4 without sound, to be played over and over; whole or not at all, and never larger than
 * asked: as large a picture as the bytes are enough for. Throws `cancelled`, `disk`, `bad-media`, or `bad-request` when a
 * rep is too long for so few bytes.
 */
export async function renderRepLoop(
  tools: MediaTools,
  clip: ClipToShow,
  output: string,
  options: RepLoopOptions,
): Promise<void> {
  const { note, words, speed = 1, mostBytes = 8_000_000, onProgress, signal } = options;
  const { table } = clip;
  const range = framesOf(clip);
  const firstFrame = nearestIn(range, frameAtUs(table, frameStartUs(table, options.firstFrame) - aroundUs));
  const lastFrame = nearestIn(range, frameAtUs(table, frameEndUs(table, options.lastFrame) + aroundUs));
  const rate = outputRate(table);
  const shown = note && { ...note, frame: firstFrame };
  const laid = layOut({
    ...{ table, firstFrame, lastFrame, notes: [], atNotes: { do: 'playOn' }, cardS: 0, speed },
    pictureUs: pictureUsAt(rate),
  });
  const timeline = { ...laid, appearances: shown ? [{ notes: [shown], atUs: 0, untilUs: laid.lastsUs }] : [] };
  const colours = await readPictureColours(tools, clip.file, signal);
  const mostBits = (shareOfRoom * mostBytes * 8 * 1_000_000) / timeline.lastsUs;
  for (const side of sidesPx) {
    const size = evenSizeWithin(sizeSeenOf(clip), side);
    const pixels = (size.width * size.height * rate.numerator) / rate.denominator;
    const isLast = side === sidesPx.at(-1);
    if (mostBits < bitsPerPixel.least * pixels && !isLast) continue;
    const overlay = await openOverlay(clip, { size, colours, words, said: note === null ? [] : wordsOfNote(note) });
    const frames = composedFrames(tools, clip, {
      ...{ timeline, rate, size, overlay, card: null, onProgress, signal },
    });
    const quality = { bitsPerSecond: Math.min(mostBits, bitsPerPixel.good * pixels) };
    const made = { size, rate, colours, frames, quality, soundtrack: null, mostBytes, signal };
    if ((await encodeVideo(tools, output, made)) === 'whole') return;
  }
  throw new ProblemError('bad-request', 'repTooLong');
}
