import { type Mover, movedReview } from '../../../../engine/edition/movedReview.ts';
import { type FrameRange, nearestIn } from '../../../../engine/framing/section.ts';
import type { Drawing } from '../../../../engine/review/drawings/drawing.ts';
import type { ClipFacts, Review } from '../../../../engine/review/review.ts';
import { clipOnCopy, type SeenCopy } from '../../../../engine/review/seenPlaces.ts';
import { frameOfMoment, frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { Moment } from '../../../../engine/time/moment.ts';

/** A clip as it lies in a handover, in a time of its own: with a card in front, standing still at remarks. */
export type PlayedClip = {
  readonly facts: ClipFacts;
  /** The frames of the footage that its review speaks of, and those of them that it shows. */
  readonly footage: FrameTable;
  readonly range: FrameRange;
  /** Its own microseconds of the footage's. */
  readonly timeOf: (footageUs: number) => number;
  /** Where remarks come up, by the flag's id, in its own microseconds; elsewhere at the time of their frames. */
  readonly remarks: ReadonlyMap<string, number>;
  /** The footage's clock at each of its frames, in microseconds; null = its own time is that clock. */
  readonly clockUs: readonly number[] | null;
};

/** A clip in the folder that was made from footage. */
export type FootageCopy = {
  /** Its name within the folder. */
  readonly file: string;
  readonly table: FrameTable;
  readonly played: PlayedClip;
};

/** A review whose moments lie in the time of the clips that are handed over; clips that aren't stay as they are. */
export function reviewAsPlayed(review: Review, played: ReadonlyMap<string, PlayedClip>): Review {
  return movedReview(review, ({ section: _, ...clip }) => {
    const own = played.get(clip.id);
    if (own === undefined) return null;
    const secondsAt = (us: number): Moment => ({
      seconds: Math.max(0, Math.round(us)) / 1_000_000,
    });
    const move = (moment: Moment) => secondsAt(own.timeOf(usOf(moment, own.footage)));
    return {
      // What is drawn is in the picture already.
      clip: { ...clip, facts: own.facts, drawings: [] },
      move,
      moveFlag: (flagId, moment) => {
        const us = own.remarks.get(flagId);
        return us === undefined ? move(moment) : secondsAt(us);
      },
    };
  });
}

/** Other times of the frames that a clip shows: those of a copy, or the clip's own on another clock. */
export type SameFrames = {
  readonly footage: FrameTable;
  /** The frames of the footage that the other times are of. */
  readonly range: FrameRange;
  readonly table: FrameTable;
  readonly facts: ClipFacts;
  /** Where a copy shows something else than the footage. */
  readonly copy?: SeenCopy;
  /** The copy's name within the folder; without one the clip is named as it was. */
  readonly file?: string;
};

/** A review whose moments are frames of other tables of the same frames; clips without one stay as they are. */
export function reviewOnFrames(review: Review, clips: ReadonlyMap<string, SameFrames>): Review {
  return movedReview(review, ({ section: _, ...clip }): Mover | null => {
    const frames = clips.get(clip.id);
    if (frames === undefined) return null;
    const { footage, range, table, facts, file, copy } = frames;
    const move = (moment: Moment): Moment => {
      const known = frameOfMoment(moment, footage);
      const frame = nearestIn(range, known) - range.firstFrame;
      return { frame, ticks: table.ticks[frame] ?? 0 };
    };
    const path = file === undefined ? {} : { path: file };
    const placed = copy === undefined ? clip : clipOnCopy(clip, copy);
    const drawings = placed.drawings?.filter((drawing) => showsIn(drawing, range));
    return { clip: { ...placed, ...(drawings && { drawings }), facts, ...path }, move };
  });
}

const usOf = (moment: Moment, table: FrameTable): number =>
  'frame' in moment
    ? frameStartUs(table, Math.min(moment.frame, table.ticks.length - 1))
    : frameStartUs(table, 0) + moment.seconds * 1_000_000;

const showsIn = ({ from, to }: Drawing, { firstFrame, lastFrame }: FrameRange): boolean =>
  ('seconds' in from || from.frame <= lastFrame) && ('seconds' in to || to.frame >= firstFrame);
