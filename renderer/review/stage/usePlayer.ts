import { type RefObject, useEffect } from 'react';
import type { Clip } from '../../../engine/review/review.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { createClipPlayer } from '../../player/ClipPicture.tsx';
import { reviewState } from '../../state/reviewState.ts';
import { sayStage } from '../../words/sayStage.ts';
import { useReviewDesk } from '../commands/ReviewDeskProvider.tsx';
import { applyLoop } from '../commands/repeating.ts';
import { playerState, playhead } from '../state/playerState.ts';

type PlayerParts = {
  readonly clip: Clip;
  readonly video: RefObject<HTMLVideoElement | null>;
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  /** null until the video and its times are loaded. */
  readonly playback: FrameTable | null;
};

/** Gives the clip on the stage its player, and takes it to where the review wants to be. */
export function usePlayer({ clip, video, canvas, playback }: PlayerParts): void {
  const { context, setPlayer } = useReviewDesk();
  const clipId = clip.id;
  const first = clip.section?.from.frame ?? 0;
  const last = clip.section?.to.frame ?? Number.POSITIVE_INFINITY;
  useEffect(() => {
    if (video.current === null || canvas.current === null || playback === null) return;
    const shown = playhead.getState();
    const lastFrame = shown.clipId === clipId ? shown.frame : first;
    playhead.setState({ clipId, frame: lastFrame, settled: false, picture: 'video' });
    const player = createClipPlayer({
      clipId,
      within: { first, last },
      video: video.current,
      canvas: canvas.current,
      playback,
      onView: (view) => playhead.setState({ clipId, ...view }),
      onPlaying: (playing) => playerState.setState({ playing }),
      onTrouble: () => playerState.setState({ trouble: sayStage('frameMissing') }),
    });
    player.setSpeed(playerState.getState().speed);
    setPlayer(player);
    applyLoop(context);
    const { pendingSeek, reached } = reviewState.getState();
    player.seekTo(pendingSeek?.clipId === clipId ? pendingSeek.frame : lastFrame);
    reached();
    return () => {
      if (context.player === player) setPlayer(null);
      player.dispose();
      playerState.setState({ playing: 'no' });
      playhead.setState({ settled: false });
    };
  }, [context, setPlayer, clipId, video, canvas, playback, first, last]);

  const goal = reviewState((state) => state.pendingSeek);
  useEffect(() => {
    const { player } = context;
    if (goal?.clipId !== clipId || player === null || playback === null) return;
    player.seekTo(goal.frame);
    reviewState.getState().reached();
  }, [context, goal, clipId, playback]);
}
