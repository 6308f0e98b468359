import { frameAtUs, frameEndUs, frameStartUs } from '../../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../../engine/time/frameTable.ts';
import type { SoundPiece } from '../../../media/read/soundtrack.ts';
import type { FrameRate } from '../../../media/write/encodeVideo.ts';
import type { PictureNote } from '../picture.ts';

/** What a clip does at a remark: stands still for a while, goes slowly around it, or plays on. */
export type AtNotes =
  | { readonly do: 'freeze'; readonly lastsS: number }
  | { readonly do: 'slow'; readonly speed: number }
  | { readonly do: 'playOn' };

export type ClipPlan = {
  readonly table: FrameTable;
  readonly firstFrame: number;
  readonly lastFrame: number;
  readonly notes: readonly PictureNote[];
  readonly atNotes: AtNotes;
  /** Length of the card in front; 0 = none. */
  readonly cardS: number;
  /** Speed where nothing else is said, 1 = as filmed. */
  readonly speed: number;
  /** How long a picture of the made clip is up: remarks that begin within the same one are up together. */
  readonly pictureUs: number;
};

/** A part of the clip that is made. Media times of `play` in microseconds; `lastsUs` in its own time. */
export type Stretch =
  | { readonly kind: 'card'; readonly lastsUs: number }
  | { readonly kind: 'freeze'; readonly lastsUs: number; readonly frame: number }
  | { readonly kind: 'play'; readonly lastsUs: number; readonly fromUs: number; readonly speed: number };

/** What one picture of the made clip shows. */
export type Shot =
  | { readonly kind: 'card' }
  | { readonly kind: 'picture'; readonly frame: number; readonly notes: readonly PictureNote[] };

/** Remarks that are up together, in the made clip's own time; from the frame on that the first of them was made at. */
export type Appearance = { readonly notes: readonly PictureNote[]; readonly atUs: number; readonly untilUs: number };

export type Timeline = Pick<ClipPlan, 'table' | 'firstFrame' | 'lastFrame'> & {
  readonly stretches: readonly Stretch[];
  readonly lastsUs: number;
  /** In the order of their times. */
  readonly appearances: readonly Appearance[];
};

/** Slow from so long before a remark to so long after it. */
const slowBeforeUs = 500_000;
const slowAfterUs = 1_000_000;
/** How long words stay up: time to find them and to read them, at some 17 characters a second. */
export const readingUs = (notes: readonly PictureNote[]): number =>
  notes.reduce(
    (sum, { heading, words }) =>
      sum + Math.min(12_000_000, Math.max(2_500_000, 1_000_000 + 60_000 * (heading.length + words.length))),
    0,
  );

/** Lays out a clip: card, then the footage in its order, with what happens at each remark. */
export function layOut(plan: ClipPlan): Timeline {
  const { table, firstFrame, lastFrame } = plan;
  const [startUs, endUs] = [frameStartUs(table, firstFrame), frameEndUs(table, lastFrame)];
  const notes = plan.notes
    .filter(({ frame }) => frame >= firstFrame && frame <= lastFrame)
    .sort((one, other) => one.frame - other.frame);
  const slow = plan.atNotes.do === 'slow' ? slowSpans(table, notes, { startUs, endUs }) : [];
  const stretches: Stretch[] = plan.cardS > 0 ? [{ kind: 'card', lastsUs: Math.round(plan.cardS * 1_000_000) }] : [];
  const begun: { readonly notes: PictureNote[]; readonly atUs: number }[] = [];
  // What a picture shows is what there is at the middle of its time.
  const pictureFrom = (atUs: number) => Math.ceil(atUs / plan.pictureUs - 0.5);
  let ownUs = stretches.reduce((sum, { lastsUs }) => sum + lastsUs, 0);
  let mediaUs = startUs;
  const add = (stretch: Stretch) => {
    stretches.push(stretch);
    ownUs += stretch.lastsUs;
  };
  const playTo = (toUs: number) => {
    while (mediaUs < toUs) {
      const inside = slow.find((span) => mediaUs >= span.fromUs && mediaUs < span.toUs);
      const next = slow.find((span) => span.fromUs > mediaUs);
      const until = Math.min(toUs, inside?.toUs ?? next?.fromUs ?? toUs);
      const speed = plan.speed * (inside && plan.atNotes.do === 'slow' ? plan.atNotes.speed : 1);
      add({ kind: 'play', lastsUs: Math.round((until - mediaUs) / speed), fromUs: mediaUs, speed });
      mediaUs = until;
    }
  };
  for (const note of notes) {
    playTo(frameStartUs(table, note.frame));
    const last = begun.at(-1);
    if (last !== undefined && pictureFrom(last.atUs) === pictureFrom(ownUs)) last.notes.push(note);
    else begun.push({ notes: [note], atUs: ownUs });
    if (plan.atNotes.do !== 'freeze' || plan.atNotes.lastsS <= 0) continue;
    add({ kind: 'freeze', lastsUs: Math.round(plan.atNotes.lastsS * 1_000_000), frame: note.frame });
  }
  playTo(endUs);
  const appearances = begun.map(({ notes, atUs }, index) => ({
    ...{ notes, atUs },
    untilUs: Math.min(begun[index + 1]?.atUs ?? ownUs, atUs + Math.max(readingUs(notes), freezeUs(plan.atNotes))),
  }));
  return { table, firstFrame, lastFrame, stretches, lastsUs: ownUs, appearances };
}

const freezeUs = (atNotes: AtNotes): number => (atNotes.do === 'freeze' ? atNotes.lastsS * 1_000_000 : 0);

type Span = { readonly fromUs: number; readonly toUs: number };

/** The slow spans around remarks, joined where they meet. */
function slowSpans(
  table: FrameTable,
  notes: readonly PictureNote[],
  { startUs, endUs }: { readonly startUs: number; readonly endUs: number },
): readonly Span[] {
  const spans: Span[] = [];
  for (const { frame } of notes) {
    const at = frameStartUs(table, frame);
    const span = { fromUs: Math.max(startUs, at - slowBeforeUs), toUs: Math.min(endUs, at + slowAfterUs) };
    const last = spans.at(-1);
    if (last === undefined || span.fromUs > last.toUs) spans.push(span);
    else spans[spans.length - 1] = { fromUs: last.fromUs, toUs: span.toUs };
  }
  return spans;
}

const none: readonly PictureNote[] = [];

/** How long one picture is up at a constant rate, in microseconds. */
export const pictureUsAt = ({ numerator, denominator }: FrameRate): number => (1_000_000 * denominator) / numerator;

/** How many pictures a laid-out clip has at a constant rate. */
export const shotCount = ({ lastsUs }: Timeline, { numerator, denominator }: FrameRate): number =>
  Math.max(1, Math.round((lastsUs * numerator) / denominator / 1_000_000));

/** The pictures of a laid-out clip at a constant rate, one after the other. */
export function* shotsOf(timeline: Timeline, rate: FrameRate): Generator<Shot, void, void> {
  const { table, firstFrame, lastFrame, stretches, appearances } = timeline;
  const { numerator, denominator } = rate;
  const count = shotCount(timeline, rate);
  let [index, startUs, shown] = [0, 0, -1];
  for (let shot = 0; shot < count; shot += 1) {
    // At the middle of a picture's time, so that rounding can't tell one frame from the next.
    const atUs = ((shot + 0.5) * denominator * 1_000_000) / numerator;
    for (let stretch = stretches[index]; stretch && atUs >= startUs + stretch.lastsUs; stretch = stretches[index]) {
      if (index === stretches.length - 1) break;
      startUs += stretch.lastsUs;
      index += 1;
    }
    const before = shown;
    while ((appearances[shown + 1]?.atUs ?? Number.POSITIVE_INFINITY) <= atUs) shown += 1;
    const stretch = stretches[index];
    if (stretch === undefined || stretch.kind === 'card') {
      yield { kind: 'card' };
      continue;
    }
    const appearance = appearances[shown];
    const notes = appearance !== undefined && atUs < appearance.untilUs ? appearance.notes : none;
    const frame =
      stretch.kind === 'freeze'
        ? stretch.frame
        : frameAtUs(table, Math.round(stretch.fromUs + (atUs - startUs) * stretch.speed));
    // A frame that is up for less than a picture might be passed over; one that is remarked on never is.
    const seen = shown > before ? (notes[0]?.frame ?? frame) : frame;
    yield { kind: 'picture', frame: Math.min(lastFrame, Math.max(firstFrame, seen)), notes };
  }
}

/** The sound of a laid-out clip: the footage's where it plays as filmed, else silence. */
export const soundPieces = ({ stretches }: Timeline): readonly SoundPiece[] =>
  stretches.map((stretch) => ({
    lastsUs: stretch.lastsUs,
    fromUs: stretch.kind === 'play' && stretch.speed === 1 ? stretch.fromUs : null,
  }));
