import { Ruler } from 'lucide-react';
import { jobsState } from '../../state/jobsState.ts';
import { isUnderWay, measure, measureAll, openMeasuring } from '../commands/measuring.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';

/** What measuring gives, with buttons to begin. */
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
          <ReviewButton command={measure} className="primary" words="Measure this clip">
            <Ruler aria-hidden="true" />
          </ReviewButton>
          <ReviewButton command={measureAll} />
        </p>
      )}
    </div>
  );
}
