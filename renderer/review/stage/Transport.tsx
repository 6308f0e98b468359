import { Columns2, Maximize2, Pause, Play, Repeat, StepBack, StepForward } from 'lucide-react';
import { useShallow } from 'zustand/react/shallow';
import { plain } from '../../base/figures.ts';
import { frameBack, frameOn, play, playBackwards } from '../../player/playingCommands.ts';
import { sayStage } from '../../words/sayStage.ts';
import { largePicture } from '../commands/arranging.ts';
import { compare } from '../commands/looking.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';
import { repeatRep } from '../commands/repeating.ts';
import { playerState } from '../state/playerState.ts';
import { zoomState } from '../state/viewState.ts';

/** Play, step, repeat and compare; how fast the clip plays, and how close the picture is. */
export function Transport() {
  const { playing, speed, loops } = playerState(useShallow(({ playing, speed, loops }) => ({ playing, speed, loops })));
  const scale = zoomState((state) => state.zoom.scale);
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
      <ReviewButton command={repeatRep} shows="icon" pressed={loops === 'rep'}>
        <Repeat aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={compare} shows="icon">
        <Columns2 aria-hidden="true" />
      </ReviewButton>
      <ReviewButton command={largePicture}>
        <Maximize2 aria-hidden="true" />
      </ReviewButton>
      <Factor name={sayStage('speed')} factor={speed} testId="speed" />
      <Factor name={sayStage('zoom')} factor={scale} testId="zoom" />
    </fieldset>
  );
}

type FactorProps = { readonly name: string; readonly factor: number; readonly testId: string };

/** Something that is usually 1 ×; shown to the eye where it is something else. */
function Factor({ name, factor, testId }: FactorProps) {
  const words = sayStage('times', { factor: plain(Math.round(factor * 100) / 100) });
  return (
    <span className="factor" data-usual={factor === 1}>
      <span className="soft">{name}</span>{' '}
      <output className="figure" aria-label={name} data-testid={testId}>
        {words}
      </output>
    </span>
  );
}
