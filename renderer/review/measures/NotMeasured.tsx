import { Ruler } from 'lucide-react';
import { KeyHint } from '../../commands/KeyHint.tsx';
import { jobsState } from '../../state/jobsState.ts';
import { measureClip, measureSession } from '../commands/measureActs.ts';
import { isUnderWay, openMeasuring } from './MeasureProgress.tsx';

/** What measuring gives, and the way to begin. */
export function NotMeasured({ clipId }: { readonly clipId: string }) {
  const runs = jobsState(({ jobs }) => isUnderWay(openMeasuring(jobs, clipId)));
  return (
    <div className="not-measured">
      <p>
        This clip was not measured yet. Measuring follows the disc and the lifter’s joints through the footage on this
        machine, and gives each rep’s times, range, speed, drift, depth and angles, each with its uncertainty.
      </p>
      {!runs && (
        <p className="measure-acts">
          <button type="button" className="primary" onClick={() => void measureClip()}>
            <Ruler aria-hidden="true" /> Measure this clip <KeyHint act="measure" />
          </button>
          <button type="button" onClick={() => void measureSession()}>
            Measure all clips <KeyHint act="measureAll" />
          </button>
        </p>
      )}
    </div>
  );
}
