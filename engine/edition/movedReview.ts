import type { Clip, Review } from '../review/review.ts';
import type { Moment } from '../time/moment.ts';

/** Another clip in the place of one, and what moves the moments of its reps, drawings and flags. */
export type Mover = {
  readonly clip: Clip;
  readonly move: (moment: Moment) => Moment;
  readonly moveFlag?: (flagId: string, moment: Moment) => Moment;
};

/** A review with the moments of some clips moved; a clip that nothing moves stays as it is. */
export function movedReview(review: Review, moverOf: (clip: Clip) => Mover | null): Review {
  return {
    ...review,
    entries: review.entries.map((entry) => {
      const movers = new Map(entry.clips.map((clip) => [clip.id, moverOf(clip)]));
      return {
        ...entry,
        clips: entry.clips.map((clip) => movedClip(clip, movers.get(clip.id) ?? null)),
        flags: entry.flags.map((flag) => {
          const mover = movers.get(flag.clip);
          if (!mover) return flag;
          return { ...flag, at: mover.moveFlag?.(flag.id, flag.at) ?? mover.move(flag.at) };
        }),
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
