import { useEffect } from 'react';
import { later } from '../base/later.ts';
import { saveDrafts } from '../drafts/flagDrafts.ts';
import { measuresState } from '../state/measuresState.ts';
import { reviewState } from '../state/reviewState.ts';
import { tablesState } from '../state/tablesState.ts';
import { followPlayhead, settleCursor } from './commands/moveActs.ts';
import { applyLoop, showGhost } from './commands/pictureActs.ts';
import { rememberPlace, savePlace } from './place.ts';
import { cursorState } from './state/cursorState.ts';
import { clearBeside, panelState } from './state/panelState.ts';
import { playhead } from './state/playhead.ts';

const isReady = (clipId: string): boolean =>
  reviewState.getState().data?.media.some((media) => media.clipId === clipId && media.ready) === true;

/** How long a session has to stay as it is before its clip's measures are read again. */
const quietMs = 200;

/** Keeps the measures with the clip on the stage, and reads them again once the session has changed. */
function followMeasures(): { readonly follow: () => void; readonly stop: () => void } {
  let callOff: (() => void) | null = null;
  let revision = -1;
  const follow = (): void => {
    const now = reviewState.getState();
    if (now.clipId === null) return;
    if (now.clipId !== measuresState.getState().clipId) void measuresState.getState().load(now.clipId);
    else if (now.revision !== revision) {
      callOff?.();
      callOff = later(quietMs, () => void measuresState.getState().refresh());
    }
    revision = now.revision;
  };
  const stop = (): void => {
    callOff?.();
    measuresState.getState().close();
  };
  return { follow, stop };
}

const showCard = (): void => {
  clearBeside();
  panelState.getState().show('card');
};

/** What goes on beside the screen's drawing while a session is open. */
export function useReviewLife(sessionId: string): void {
  useEffect(() => {
    void reviewState.getState().open(sessionId);
    const measures = followMeasures();
    const onReview = (): void => {
      const { clipId } = reviewState.getState();
      if (clipId !== null && isReady(clipId)) void tablesState.getState().load(clipId);
      measures.follow();
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
        // A fault is named on the card: whoever flags while reading measures needs to see it.
        if (now.namingFlagId !== null && before.namingFlagId === null) showCard();
      }),
    ];
    return () => {
      for (const stop of stops) stop();
      measures.stop();
      window.removeEventListener('keyup', onKeyUp);
      window.removeEventListener('blur', onKeyUp);
      void saveDrafts();
      savePlace();
    };
  }, [sessionId]);
}
