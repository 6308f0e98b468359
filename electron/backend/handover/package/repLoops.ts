import type { Clip } from '../../../../engine/review/review.ts';
import { type Weight, weights } from '../../../../engine/rubric/rubric.ts';
import type { FlagRow } from '../../../../engine/sheet/flagRows.ts';
import { frameAtUs } from '../../../../engine/time/frames.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';
import { type Moment, momentUs } from '../../../../engine/time/moment.ts';

/** A rep to be shown as a loop, with the heaviest remark on it. */
export type RepToLoop = {
  readonly rep: number;
  readonly firstFrame: number;
  readonly lastFrame: number;
  readonly row: FlagRow;
};

const heaviness = (weight: Weight): number => weights.indexOf(weight);

/** A rep whose end nobody knows lasts till the next, and no longer than this. */
const longestUs = 10_000_000;

/** The flagged reps of a clip whose time is known, rising; praise alone asks for no loop. */
export function repsToLoop(clip: Clip, rows: readonly FlagRow[], table: FrameTable): readonly RepToLoop[] {
  const at = (moment: Moment): number | null => momentUs(moment, table.timeBase);
  const reps = [...clip.reps].sort((one, other) => one.index - other.index);
  return reps.flatMap((rep, index) => {
    const [row] = rows
      .filter(({ reps: of, weight }) => weight !== 'keep' && of?.includes(rep.index) === true)
      .sort((one, other) => heaviness(other.weight) - heaviness(one.weight));
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
