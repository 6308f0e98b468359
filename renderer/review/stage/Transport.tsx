import {
  ChevronLeft,
  ChevronRight,
  Columns2,
  Maximize,
  Pause,
  Play,
  Repeat,
  StepBack,
  ZoomIn,
  ZoomOut,
} from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { plain } from '../../base/figures.ts';
import { frameBack, frameOn, play, playBackwards, speeds } from '../../player/playingCommands.ts';
import { closer, compare, further, wholePicture } from '../commands/looking.ts';
import { ReviewButton, useReview } from '../commands/ReviewDeskProvider.tsx';
import { repeatRep } from '../commands/repeating.ts';
import { playerState } from '../state/playerState.ts';
import { zoomState } from '../state/viewState.ts';

/** Play, step, speed and repeat. */
export function Transport() {
  const { setSpeed } = useReview();
  const { playing, speed, loops } = playerState(useShallow(({ playing, speed, loops }) => ({ playing, speed, loops })));
  return (
    <fieldset className="transport" aria-label="Picture">
      <ReviewButton
        command={play}
        className="play-button"
        shows="words"
        {...(playing === 'no' ? {} : { words: 'Pause' })}
      >
        {playing === 'no' ? <Play aria-hidden="true" /> : <Pause aria-hidden="true" />}
      </ReviewButton>
      <ReviewButton command={playBackwards} shows="icon" pressed={playing === 'backwards'}>
        <StepBack aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={frameBack} shows="icon">
        <ChevronLeft aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={frameOn} shows="icon">
        <ChevronRight aria-hidden="true" />
      </ReviewButton>
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
      <ReviewButton command={repeatRep} shows="words" pressed={loops === 'rep'}>
        <Repeat aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={compare} shows="words">
        <Columns2 aria-hidden="true" />
      </ReviewButton>
      <ZoomBar />
    </fieldset>
  );
}

/** Closer, further away, and the whole picture again. */
export function ZoomBar() {
  const scale = zoomState((state) => state.zoom.scale);
  return (
    <span className="zoom-bar">
      <ReviewButton command={closer} shows="icon">
        <ZoomIn aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={further} shows="icon">
        <ZoomOut aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={wholePicture} shows="icon">
        <Maximize aria-hidden="true" />
      </ReviewButton>
      <output className="figure" data-testid="zoom">
        {plain(Math.round(scale * 10) / 10)} ×
      </output>
    </span>
  );
}
