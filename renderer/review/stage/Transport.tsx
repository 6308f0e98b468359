import { ChevronLeft, ChevronRight, Columns2, Pause, Play, Repeat, StepBack } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { plain } from '../../base/figures.ts';
import { speeds } from '../../player/speeds.ts';
import { compareClip } from '../commands/compareAct.ts';
import { setSpeed, step, toggleBackwards, toggleLoop, togglePlay } from '../commands/pictureActs.ts';
import { playerState } from '../state/playerState.ts';
import { ZoomBar } from './ZoomBar.tsx';

const pressed = { repeat: false };

/** Play, step, speed and repeat. */
export function Transport({ disabled }: { readonly disabled?: true }) {
  const { playing, speed, loops } = playerState(useShallow(({ playing, speed, loops }) => ({ playing, speed, loops })));
  return (
    <fieldset className="transport" aria-label="Picture">
      <button type="button" className="play-button" disabled={disabled} onClick={togglePlay}>
        {playing === 'no' ? <Play aria-hidden="true" /> : <Pause aria-hidden="true" />}
        {playing === 'no' ? 'Play' : 'Pause'}
      </button>
      <button
        type="button"
        aria-label="Play backwards"
        aria-pressed={playing === 'backwards'}
        disabled={disabled}
        onClick={toggleBackwards}
      >
        <StepBack aria-hidden="true" />
      </button>
      <button type="button" aria-label="One frame back" disabled={disabled} onClick={() => step(-1, pressed)}>
        <ChevronLeft aria-hidden="true" />
      </button>
      <button type="button" aria-label="One frame on" disabled={disabled} onClick={() => step(1, pressed)}>
        <ChevronRight aria-hidden="true" />
      </button>
      <label className="speed">
        <span>Speed</span>
        <select value={speed} onChange={(event) => setSpeed(Number(event.target.value))}>
          {speeds.map((known) => (
            <option key={known} value={known}>
              {plain(known)} ×
            </option>
          ))}
        </select>
      </label>
      <button type="button" aria-pressed={loops === 'rep'} disabled={disabled} onClick={toggleLoop}>
        <Repeat aria-hidden="true" /> Repeat rep
      </button>
      <button type="button" disabled={disabled} onClick={compareClip}>
        <Columns2 aria-hidden="true" /> Compare
      </button>
      <ZoomBar {...(disabled === undefined ? {} : { disabled })} />
    </fieldset>
  );
}
