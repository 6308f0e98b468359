import { Columns2, Maximize, Pause, Play, Repeat, StepBack, StepForward, ZoomIn, ZoomOut } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { plain } from '../../base/figures.ts';
import { frameBack, frameOn, play, playBackwards, speeds } from '../../player/playingCommands.ts';
import { sayStage } from '../../words/sayStage.ts';
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
    <fieldset className="transport" aria-label={sayStage('picture')}>
      <ReviewButton
        command={play}
        className="play-button"
        shows="words"
        {...(playing === 'no' ? {} : { words: sayStage('pause') })}
      >
        {playing === 'no' ? <Play aria-hidden="true" /> : <Pause aria-hidden="true" />}
      </ReviewButton>
      <ReviewButton command={playBackwards} shows="icon" pressed={playing === 'backwards'}>
        <Play className="play-backwards" aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={frameBack} shows="icon">
        <StepBack aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={frameOn} shows="icon">
        <StepForward aria-hidden="true" />
      </ReviewButton>
      <label className="speed">
        <span>{sayStage('speed')}</span>
        <select value={speed} onChange={(event) => setSpeed(Number(event.target.value))}>
          {speeds.map((known) => (
            <option key={known} value={known}>
              {sayStage('times', { factor: plain(known) })}
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

/** Zooming in and out, and the whole picture again. */
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
        {sayStage('times', { factor: plain(Math.round(scale * 10) / 10) })}
      </output>
    </span>
  );
}
