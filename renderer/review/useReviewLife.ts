import { useEffect } from 'react';
import { cursorState } from '../state/cursorState.ts';
import { playhead } from '../state/playhead.ts';
import { reviewState } from '../state/reviewState.ts';
import { tablesState } from '../state/tablesState.ts';
import { followPlayhead, settleCursor } from './acts/moveActs.ts';
import { applyLoop, showGhost } from './acts/pictureActs.ts';
import { saveDrafts } from './notes/drafts.ts';
import { rememberPlace, savePlace } from './place.ts';

const isReady = (clipId: string): boolean =>
  reviewState.getState().data?.media.some((media) => media.clipId === clipId && media.ready) === true;

/** What goes on beside the screen's drawing while a session is open. */
export function useReviewLife(sessionId: string): void {
  useEffect(() => {
    void reviewState.getState().open(sessionId);
    const onReview = (): void => {
      const { clipId } = reviewState.getState();
      if (clipId !== null && isReady(clipId)) void tablesState.getState().load(clipId);
      settleCursor();
      applyLoop();
    };
    const onPlayhead = (): void => {
      followPlayhead();
      rememberPlace();
    };
    const onKeyUp = (): void => showGhost('hidden');
    window.addEventListener('keyup', onKeyUp);
    window.addEventListener('blur', onKeyUp);
    onReview();
    const stops = [
      reviewState.subscribe(onReview),
      playhead.subscribe(onPlayhead),
      cursorState.subscribe((now, before) => {
        if (now.column !== before.column) applyLoop();
      }),
    ];
    return () => {
      for (const stop of stops) stop();
      window.removeEventListener('keyup', onKeyUp);
      window.removeEventListener('blur', onKeyUp);
      void saveDrafts();
      savePlace();
    };
  }, [sessionId]);
}
