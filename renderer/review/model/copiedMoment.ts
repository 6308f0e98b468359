import type { Clip, Flag } from '../../../engine/review/review.ts';
import { frameAtUs, frameOfMoment, frameStartUs } from '../../../engine/time/frames.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { repAtFrame, repFrames, samePhase } from '../../player/repFrames.ts';

/** A clip with its frames. */
type Timed = { readonly clip: Clip; readonly table: FrameTable };

/** The rep that a flag's moment is counted from: the one it stands in, else the first that the flag speaks of. */
function ownRep({ at, reps }: Pick<Flag, 'at' | 'reps'>, { clip, table }: Timed): number | null {
  const holding = repAtFrame(clip.reps, frameOfMoment(at, table), table);
  const named = reps === 'set' ? [] : reps;
  return holding !== null && (reps === 'set' || named.includes(holding)) ? holding : (named[0] ?? null);
}

/**
 * Where a copy of a flag stands in another place: at the same phase of the rep where both reps and their ends are marked, else as
 * far from the rep's start, or from the clip's where no rep is marked. A copy on a whole set goes to the rep of the same number.
 */
export function copiedFrame(
  flag: Pick<Flag, 'at' | 'reps'>,
  from: Timed,
  to: Timed & { readonly rep: number | 'set' },
): number {
  const frame = frameOfMoment(flag.at, from.table);
  const own = ownRep(flag, from);
  const rep = to.rep === 'set' ? own : to.rep;
  const [fromRep, toRep] = [from, to].map(({ clip }, index) =>
    clip.reps.find((known) => known.index === (index === 0 ? own : rep)),
  );
  const isWithin = repAtFrame(from.clip.reps, frame, from.table) === own;
  if (own !== null && rep !== null && fromRep?.end !== undefined && toRep?.end !== undefined && isWithin) {
    const atPhase = samePhase(
      frame,
      { reps: from.clip.reps, index: own, table: from.table },
      { reps: to.clip.reps, index: rep, table: to.table },
    );
    if (atPhase !== null) return atPhase;
  }
  const startOf = ({ clip, table }: Timed, index: number | null): number =>
    frameStartUs(table, (index === null ? null : repFrames(clip.reps, index, table)?.first) ?? 0);
  const sinceStartUs = frameStartUs(from.table, frame) - startOf(from, own);
  return frameAtUs(to.table, Math.max(0, startOf(to, rep) + sinceStartUs));
}
