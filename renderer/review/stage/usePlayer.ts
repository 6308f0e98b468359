import { type RefObject, useEffect } from 'react';
import { clipAddress } from '../../../electron/contract/addresses.ts';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { everyRefresh, later } from '../../parts/later.ts';
import { playerState } from '../../state/playerState.ts';
import { playhead } from '../../state/playhead.ts';
import { reviewState } from '../../state/reviewState.ts';
import { currentPlayer, holdPlayer } from '../acts/heldPlayer.ts';
import { applyLoop } from '../acts/pictureActs.ts';
import { clipTimes, createPlayer } from '../player/index.ts';
import { createStillPainter } from '../player/stillPicture.ts';

type PlayerParts = {
  readonly clip: Clip;
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  /** null until the video and its times are loaded. */
  readonly playback: FrameTable | null;
};

/** Gives the clip on the stage its player, and takes it to where the review wants to be. */
export function usePlayer({ clip, video, canvas, playback }: PlayerParts): void {
  const clipId = clip.id;
  useEffect(() => {
    if (video.current === null || canvas.current === null || playback === null) return;
    const times = clipTimes(playback);
    const painter = createStillPainter(clipAddress(clipId), canvas.current, times);
    const shown = playhead.getState();
    const lastFrame = shown.clipId === clipId ? shown.frame : 0;
    playhead.setState({ clipId, frame: lastFrame, settled: false, picture: 'video' });
    const player = createPlayer({
      video: video.current,
      times,
      still: painter.draw,
      source: painter.source,
      later,
      now: () => performance.now(),
      everyRefresh,
      onView: (view) => playhead.setState({ clipId, ...view }),
      onPlaying: (playing) => playerState.setState({ playing }),
      onTrouble: () =>
        playerState.setState({ trouble: 'This frame can’t be shown: the clip’s file may be missing or damaged.' }),
    });
    player.setSpeed(playerState.getState().speed);
    holdPlayer(player);
    applyLoop();
    const { goal, reached } = reviewState.getState();
    player.seekTo(goal?.clipId === clipId ? goal.frame : lastFrame);
    reached();
    return () => {
      if (currentPlayer() === player) holdPlayer(null);
      player.dispose();
      painter.dispose();
      playerState.setState({ playing: 'no' });
    };
  }, [clipId, video, canvas, playback]);

  const goal = reviewState((state) => state.goal);
  useEffect(() => {
    const player = currentPlayer();
    if (goal?.clipId !== clipId || player === null || playback === null) return;
    player.seekTo(goal.frame);
    reviewState.getState().reached();
  }, [goal, clipId, playback]);
}
