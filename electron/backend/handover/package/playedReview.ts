import type { Clip, ClipFacts, Review } from '../../../../engine/review/review.ts';
import { frameAtUs, frameStartUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import type { Moment } from '../../../../engine/time/moment.ts';

/** A clip as it lies in a handover, in a time of its own: with a card in front, standing still at remarks. */
export type PlayedClip = {
  readonly facts: ClipFacts;
  /** The frames of the footage that its review speaks of. */
  readonly footage: FrameTable;
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
  return moved(review, (clip) => {
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

/** Other times of the frames of a clip: those of a copy, or the clip's own on another clock. */
export type SameFrames = {
  readonly footage: FrameTable;
  readonly table: FrameTable;
  readonly facts: ClipFacts;
  /** The copy's name within the folder; without one the clip is named as it was. */
  readonly file?: string;
};

/** A review whose moments are frames of other tables of the same frames; clips without one stay as they are. */
export function reviewOnFrames(review: Review, clips: ReadonlyMap<string, SameFrames>): Review {
  return moved(review, (clip) => {
    const frames = clips.get(clip.id);
    if (frames === undefined) return null;
    const { footage, table, facts, file } = frames;
    const move = (moment: Moment): Moment => {
      const frame = 'frame' in moment ? moment.frame : frameAtUs(footage, Math.round(moment.seconds * 1_000_000));
      return { frame, ticks: table.ticks[frame] ?? 0 };
    };
    const path = file === undefined ? {} : { path: file };
    return { clip: { ...clip, facts, ...path }, move, moveFlag: (_, moment) => move(moment) };
  });
}

const usOf = (moment: Moment, table: FrameTable): number =>
  'frame' in moment ? frameStartUs(table, Math.min(moment.frame, table.ticks.length - 1)) : moment.seconds * 1_000_000;

type Mover = {
  readonly clip: Clip;
  readonly move: (moment: Moment) => Moment;
  readonly moveFlag: (flagId: string, moment: Moment) => Moment;
};

function moved(review: Review, moverOf: (clip: Clip) => Mover | null): Review {
  return {
    ...review,
    entries: review.entries.map((entry) => {
      const movers = new Map(entry.clips.map((clip) => [clip.id, moverOf(clip)]));
      return {
        ...entry,
        clips: entry.clips.map((clip) => movedClip(clip, movers.get(clip.id) ?? null)),
        flags: entry.flags.map((flag) => ({
          ...flag,
          at: movers.get(flag.clip)?.moveFlag(flag.id, flag.at) ?? flag.at,
        })),
      };
    }),
  };
}

function movedClip(clip: Clip, mover: Mover | null): Clip {
  if (mover === null) return clip;
  const { move } = mover;
  return {
    ...mover.clip,
    reps: clip.reps.map(({ start, stretchedEnd, end, ...rep }) => ({
      ...rep,
      start: move(start),
      ...(stretchedEnd && { stretchedEnd: move(stretchedEnd) }),
      ...(end && { end: move(end) }),
    })),
    ...(mover.clip.drawings && {
      drawings: mover.clip.drawings.map((drawing) => ({ ...drawing, from: move(drawing.from), to: move(drawing.to) })),
    }),
  };
}
