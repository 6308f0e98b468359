import { memo } from 'react';
import type { Flag } from '../../../engine/review/review.ts';
import type { Weight } from '../../../engine/rubric/rubric.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { Strokes } from '../../parts/Strokes.tsx';
import { visitFlag } from '../acts/judgeActs.ts';
import { frameOfMoment } from '../repAtFrame.ts';
import { flagLanes } from './flagLanes.ts';
import { shareOfFrame } from './stripScale.ts';
import { inWindow, type StripWindow } from './stripWindow.ts';

/** Widths of the strokes with a little air, as shares of the narrowest strip. */
const width: Readonly<Record<Weight, number>> = {
  keep: 0.034,
  prefer: 0.025,
  adjust: 0.034,
  correct: 0.043,
  stop: 0.055,
};
const laneRem = 1.125;

type FlagMarksProps = {
  readonly flags: readonly Flag[];
  readonly table: FrameTable;
  readonly window: StripWindow;
};

/** Notes and cues are not drawn here: typing them must not draw hundreds of marks anew. */
function looksTheSame(one: FlagMarksProps, other: FlagMarksProps): boolean {
  return (
    one.table === other.table &&
    one.window === other.window &&
    one.flags.length === other.flags.length &&
    one.flags.every((flag, place) => {
      const twin = other.flags[place];
      return (
        twin !== undefined &&
        flag.id === twin.id &&
        flag.weight === twin.weight &&
        flag.criterion === twin.criterion &&
        JSON.stringify([flag.at, flag.reps]) === JSON.stringify([twin.at, twin.reps])
      );
    })
  );
}

export const FlagMarks = memo(MarksOfClip, looksTheSame);

/** The flags of a clip under the place they stand at; a click goes there. */
function MarksOfClip({ flags: all, table, window }: FlagMarksProps) {
  const placeOf = (flag: Flag): number => inWindow(window, shareOfFrame(table, frameOfMoment(flag.at, table)));
  const flags = all.filter((flag) => placeOf(flag) >= 0 && placeOf(flag) <= 1);
  const marks = flags.map((flag) => ({ place: placeOf(flag), width: width[flag.weight] }));
  const lanes = flagLanes(marks);
  return (
    <div className="strip-flags" style={{ height: `${laneRem * (Math.max(0, ...lanes) + 1) + 0.25}rem` }}>
      {flags.map((flag, index) => (
        <button
          key={flag.id}
          type="button"
          tabIndex={-1}
          className="strip-flag"
          style={{ left: `${(marks[index]?.place ?? 0) * 100}%`, top: `${(lanes[index] ?? 0) * laneRem}rem` }}
          aria-label={`Flag: ${flag.weight}. Go to it`}
          onClick={() => visitFlag(flag)}
        >
          <Strokes weight={flag.weight} named="elsewhere" />
        </button>
      ))}
    </div>
  );
}
