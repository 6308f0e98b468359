import type { Exercise, Goal } from '../../../engine/exercises/exercise.ts';
import type { SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import type { Criterion } from '../../../engine/rubric/rubric.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { measuresState } from '../../state/measuresState.ts';
import { adoptMeasuredReps, measureAgain } from '../commands/measuring.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { setUp } from '../commands/settingUp.ts';
import { CalibrationLine } from './CalibrationLine.tsx';
import { MeasureProgress } from './MeasureProgress.tsx';
import { MeasureTable } from './MeasureTable.tsx';
import { NotMeasured } from './NotMeasured.tsx';
import { PathPlot } from './PathPlot.tsx';
import { SuggestionList } from './SuggestionList.tsx';
import { TempoBars } from './TempoBars.tsx';
import { tempoToMeet } from './tempoTarget.ts';
import { useCurrentRep } from './useCurrentRep.ts';

type MeasuresPanelProps = {
  readonly entry: Entry;
  readonly clip: Clip;
  readonly exercise: Exercise | null;
  readonly goal: Goal;
  readonly criteria: readonly Criterion[];
  /** Null while the clip's times are not known. */
  readonly table: FrameTable | null;
};

/** What was measured of the clip on the stage, what it proposes, and how to begin. */
export function MeasuresPanel({ entry, clip, exercise, goal, criteria, table }: MeasuresPanelProps) {
  const context = useReview();
  const measures = measuresState((state) => (state.clipId === clip.id ? state.measures : null));
  const measurement = measures?.measurement ?? null;
  return (
    <section className="measures" aria-label="Measures">
      <MeasureProgress clipId={clip.id} />
      {measures !== null && measurement === null && <NotMeasured clipId={clip.id} />}
      {measures !== null && measurement !== null && table !== null && (
        <>
          <CalibrationLine measurement={measurement} />
          <p className="measure-acts">
            <ReviewButton command={adoptMeasuredReps} />
            <button type="button" onClick={() => void measureAgain(context)}>
              Measure again
            </button>
            <ReviewButton command={setUp} />
          </p>
          <SuggestionList measures={measures} clip={clip} exercise={exercise} criteria={criteria} table={table} />
          <Measured measurement={measurement} entry={entry} clip={clip} exercise={exercise} goal={goal} table={table} />
        </>
      )}
    </section>
  );
}

type MeasuredProps = Pick<MeasuresPanelProps, 'entry' | 'clip' | 'exercise' | 'goal'> & {
  readonly measurement: SetMeasurement;
  readonly table: FrameTable;
};

function Measured({ measurement, entry, clip, exercise, goal, table }: MeasuredProps) {
  const current = useCurrentRep(clip.id, measurement.reps, table);
  const tempo = tempoToMeet(entry.plan, exercise, goal);
  if (measurement.reps.length === 0) return <p className="soft">No reps were found in this clip.</p>;
  return (
    <>
      <h2>Each rep</h2>
      <MeasureTable measurement={measurement} tempo={tempo} current={current} />
      <div className="plots">
        <PathPlot measurement={measurement} exercise={exercise} current={current} />
        <TempoBars reps={measurement.reps} tempo={tempo} current={current} />
      </div>
    </>
  );
}
