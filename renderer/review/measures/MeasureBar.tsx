import { Crosshair, Ruler } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { share } from '../../base/figures.ts';
import { jobsState } from '../../state/jobsState.ts';
import { measuresState } from '../../state/measuresState.ts';
import { isUnderWay, layerCommands, measure, openMeasuring } from '../commands/measuring.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';
import { leaveSettingUp, setUp } from '../commands/settingUp.ts';
import { setUpState } from '../state/pictureTools.ts';
import { layers, layersState } from '../state/viewState.ts';

/** Measuring the clip on the stage, its layers over the picture, and its set-up. */
export function MeasureBar({ clipId }: { readonly clipId: string }) {
  const job = jobsState(useShallow(({ jobs }) => openMeasuring(jobs, clipId)));
  const recorded = measuresState((state) => state.clipId === clipId && state.measures?.recordedAt != null);
  const settingUp = setUpState((state) => state.settingUp === 'on');
  const hidden = layersState((state) => state.hidden);
  return (
    <fieldset className="measure-bar" aria-label="Measuring">
      {isUnderWay(job) && (
        <ReviewButton
          command={measure}
          words={`Measuring ${job.progress === null ? '' : share(job.progress)}`}
          shows="words"
        >
          <Ruler aria-hidden="true" />
        </ReviewButton>
      )}
      {!recorded && !isUnderWay(job) && (
        <ReviewButton command={measure}>
          <Ruler aria-hidden="true" />
        </ReviewButton>
      )}
      <ReviewButton command={setUp} expanded={settingUp} instead={settingUp ? leaveSettingUp : undefined}>
        <Crosshair aria-hidden="true" />
      </ReviewButton>
      {recorded &&
        layers.map((layer) => (
          <ReviewButton key={layer} command={layerCommands[layer]} pressed={!hidden.includes(layer)} />
        ))}
    </fieldset>
  );
}
