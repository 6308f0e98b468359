import { Ruler } from 'lucide-react';
import { useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Exercise, Goal } from '../../../engine/exercises/exercise.ts';
import type { RepMeasurement, SetMeasurement } from '../../../engine/motion/measurement.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { sayFollowedToCoach } from '../../../engine/wording/sayFollowed.ts';
import { sayWarningToCoach } from '../../../engine/wording/sayMeasuring.ts';
import { decimal } from '../../base/measureWords.ts';
import { JobRow } from '../../shared/JobRow.tsx';
import { measuresState } from '../../state/clipState.ts';
import { jobsState } from '../../state/jobsState.ts';
import { deskLanguage } from '../../words/deskLanguage.ts';
import { sayMeasures } from '../../words/sayMeasures.ts';
import {
  adoptMeasuredReps,
  isUnderWay,
  measure,
  measureAgain,
  measureAll,
  openMeasuring,
} from '../commands/measuring.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { setUp } from '../commands/settingUp.ts';
import { secondsOfFrame } from '../model/moments.ts';
import { usePlayhead } from '../state/playerState.ts';
import { MeasureTable } from './MeasureTable.tsx';
import { OfferedReps } from './OfferedReps.tsx';
import { PathPlot } from './PathPlot.tsx';
import { columnsOf } from './repCells.ts';
import { SuggestionList } from './SuggestionList.tsx';
import { TempoBars } from './TempoBars.tsx';
import { tempoToMeet } from './tempoTarget.ts';
import { ViewLine } from './ViewLine.tsx';

type MeasuresPanelProps = {
  readonly entry: Entry;
  readonly clip: Clip;
  readonly exercise: Exercise | null;
  readonly goal: Goal;
  readonly catalogue: Catalogue;
  /** Null while the clip's times are not known. */
  readonly table: FrameTable | null;
};

/** What was measured of the clip on the stage, what it proposes, and how to begin. */
export function MeasuresPanel({ entry, clip, exercise, goal, catalogue, table }: MeasuresPanelProps) {
  const context = useReview();
  const measures = measuresState((state) => (state.clipId === clip.id ? state.measures : null));
  const measurement = measures?.measurement ?? null;
  return (
    <section className="measures" aria-label={sayMeasures('measures')}>
      <MeasureProgress clipId={clip.id} />
      {measures !== null && measurement === null && <NotMeasured clipId={clip.id} />}
      {measures !== null && measurement !== null && table !== null && (
        <>
          <CalibrationLine measurement={measurement} />
          <ViewLine read={measurement.view} clip={clip} exercise={exercise} />
          <p className="measure-acts">
            <ReviewButton command={adoptMeasuredReps} />
            <button type="button" onClick={() => void measureAgain(context)}>
              {sayMeasures('measureAgain')}
            </button>
            <ReviewButton command={setUp} />
          </p>
          <SuggestionList measures={measures} clip={clip} exercise={exercise} catalogue={catalogue} table={table} />
          <OfferedReps offered={measurement.offered} />
          <Measured
            measurement={measurement}
            entry={entry}
            clip={clip}
            exercise={exercise}
            goal={goal}
            catalogue={catalogue}
            table={table}
          />
        </>
      )}
    </section>
  );
}

type MeasuredProps = Pick<MeasuresPanelProps, 'entry' | 'clip' | 'exercise' | 'goal' | 'catalogue'> & {
  readonly measurement: SetMeasurement;
  readonly table: FrameTable;
};

function Measured({ measurement, entry, clip, exercise, goal, catalogue, table }: MeasuredProps) {
  const current = useCurrentRep(clip.id, measurement.reps, table);
  const tempo = tempoToMeet(entry.plan, exercise, goal);
  if (measurement.reps.length === 0) return <p className="soft">{sayMeasures('noReps')}</p>;
  return (
    <>
      <h2>{sayMeasures('eachRep')}</h2>
      <MeasureTable
        measurement={measurement}
        columns={columnsOf(catalogue, entry.exercise)}
        tempo={tempo}
        current={current}
      />
      <div className="plots">
        <PathPlot measurement={measurement} exercise={exercise} current={current} />
        <TempoBars reps={measurement.reps} tempo={tempo} current={current} />
      </div>
    </>
  );
}

/** How far measuring a clip has got, with buttons to cancel or try again. */
function MeasureProgress({ clipId }: { readonly clipId: string }) {
  const job = jobsState(useShallow(({ jobs }) => openMeasuring(jobs, clipId)));
  return job === null ? null : (
    <ul className="job-list">
      <JobRow job={job} />
    </ul>
  );
}

/** The measured rep on screen; between reps, the one before. Renders only when it changes. */
function useCurrentRep(clipId: string, reps: readonly RepMeasurement[], table: FrameTable): number | null {
  const [current, setCurrent] = useState<number | null>(null);
  usePlayhead((now) => {
    if (now.clipId !== clipId) return;
    const seconds = secondsOfFrame(now.frame, table);
    const rep = reps.findLast(({ startS }) => startS <= seconds + 1e-3) ?? reps[0];
    if ((rep?.index ?? null) !== current) setCurrent(rep?.index ?? null);
  });
  return current;
}

/** What the numbers rest on: scale, camera, what is followed, smoothing. */
function calibrationFacts({ calibration, follows, track, facing }: SetMeasurement): readonly string[] {
  const { lost, frames } = track;
  const facts = follows === 'nothing' || lost === 0 ? [] : [sayMeasures('lost', { lost, frames })];
  if (calibration !== null) {
    const { metresPerPixel, relativeUncertainty, offAxisDeg, rollDeg, cutOffHz, from } = calibration;
    facts.push(
      sayMeasures('scale', {
        millimetres: decimal(metresPerPixel * 1000, 2),
        percent: decimal(relativeUncertainty * 100, 1),
        from,
      }),
      offAxisDeg === null
        ? sayMeasures('squareUnknown')
        : sayMeasures('offSquare', { degrees: decimal(offAxisDeg, 0) }),
      ...(Math.abs(rollDeg) >= 0.05 ? [sayMeasures('roll', { degrees: decimal(rollDeg, 1) })] : []),
      sayMeasures('smoothed', { hertz: decimal(cutOffHz, 1) }),
    );
  }
  if (facing !== null) facts.push(sayMeasures('facing', { side: facing }));
  return facts;
}

/** Warnings to read before the numbers, then what the numbers rest on. */
function CalibrationLine({ measurement }: { readonly measurement: SetMeasurement }) {
  const { warnings } = measurement;
  const { language } = deskLanguage.getState();
  return (
    <div className="calibration">
      {warnings.length > 0 && (
        <ul className="measure-warnings" aria-label={sayMeasures('readFirst')}>
          {warnings
            .map((warning) => sayWarningToCoach(warning, language))
            .map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
        </ul>
      )}
      <p className="soft" data-testid="calibration">
        {[sayFollowedToCoach(measurement, language), calibrationFacts(measurement).join(' · ')].join(' ')}
      </p>
    </div>
  );
}

/** What measuring gives, with buttons to begin. */
function NotMeasured({ clipId }: { readonly clipId: string }) {
  const runs = jobsState(({ jobs }) => isUnderWay(openMeasuring(jobs, clipId)));
  return (
    <div className="not-measured">
      <p>{sayMeasures('notMeasured')}</p>
      {!runs && (
        <p className="measure-acts">
          <ReviewButton command={measure} className="primary" words={sayMeasures('measureThis')}>
            <Ruler aria-hidden="true" />
          </ReviewButton>
          <ReviewButton command={measureAll} />
        </p>
      )}
    </div>
  );
}
