import { Crosshair, Ruler } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { share } from '../../base/figures.ts';
import { KeyHint } from '../../commands/KeyHint.tsx';
import type { KeyId } from '../../commands/keyTable.ts';
import { jobsState } from '../../state/jobsState.ts';
import { measuresState } from '../../state/measuresState.ts';
import { measureClip } from '../commands/measureActs.ts';
import { leaveSettingUp, startSettingUp } from '../commands/setUpActs.ts';
import { type Layer, layers, layersState } from '../state/layersState.ts';
import { setUpState } from '../state/setUpState.ts';
import { isUnderWay, openMeasuring } from './MeasureProgress.tsx';

const layerWords: Readonly<Record<Layer, { readonly name: string; readonly act: KeyId }>> = {
  path: { name: 'Path', act: 'layerPath' },
  disc: { name: 'Disc', act: 'layerDisc' },
  joints: { name: 'Joints', act: 'layerJoints' },
  curves: { name: 'Curves', act: 'layerCurves' },
};

type MeasureBarProps = { readonly clipId: string; readonly disabled?: true };

/** Measuring the clip on the stage, the layers it gives, and telling it what it can't see. */
export function MeasureBar({ clipId, disabled }: MeasureBarProps) {
  const job = jobsState(useShallow(({ jobs }) => openMeasuring(jobs, clipId)));
  const recorded = measuresState((state) => state.clipId === clipId && state.measures?.recordedAt != null);
  const settingUp = setUpState((state) => state.settingUp === 'on');
  return (
    <fieldset className="measure-bar" aria-label="Measuring">
      {(!recorded || isUnderWay(job)) && (
        <button type="button" disabled={disabled ?? isUnderWay(job)} onClick={() => void measureClip()}>
          <Ruler aria-hidden="true" />
          {isUnderWay(job) ? `Measuring ${job.progress === null ? '' : share(job.progress)}` : 'Measure'}
          {!isUnderWay(job) && <KeyHint act="measure" />}
        </button>
      )}
      <button
        type="button"
        aria-expanded={settingUp}
        disabled={disabled}
        onClick={() => (settingUp ? leaveSettingUp() : startSettingUp())}
      >
        <Crosshair aria-hidden="true" /> Set-up <KeyHint act="setUp" />
      </button>
      {recorded && <LayerButtons />}
    </fieldset>
  );
}

function LayerButtons() {
  const { hidden, toggle } = layersState();
  return layers.map((layer) => (
    <button key={layer} type="button" aria-pressed={!hidden.includes(layer)} onClick={() => toggle(layer)}>
      {layerWords[layer].name} <KeyHint act={layerWords[layer].act} />
    </button>
  ));
}
