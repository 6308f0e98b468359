import { playerState, playhead } from '../state/playerState.ts';
import type { ReviewContext } from './reviewContext.ts';

/**
 * Stops the clip on the stage and gives the frame that is on screen once it stands still: the one that was on screen, or that a
 * seek under way was heading for. Null where no picture comes.
 */
export function frameOnScreen(context: ReviewContext): Promise<number | null> {
  const { stage, player } = context;
  if (stage === null || player === null) return Promise.resolve(null);
  const clipId = stage.clip.id;
  player.pause();
  const wanted = player.frame();
  const shown = (): boolean => playhead.getState().clipId === clipId && playhead.getState().settled;
  if (shown()) return Promise.resolve(playhead.getState().frame);
  if (playerState.getState().trouble !== '') return Promise.resolve(null);
  return new Promise((resolve) => {
    const end = (frame: number | null): void => {
      for (const stop of stops) stop();
      resolve(frame);
    };
    const look = (): void => {
      if (playerState.getState().trouble !== '' || context.player !== player) end(null);
      // Whoever has moved on meanwhile meant the frame that they had asked for before.
      else if (shown()) end(wanted);
    };
    const stops = [playhead.subscribe(look), playerState.subscribe(look)];
  });
}
