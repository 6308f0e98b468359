import { useEffect } from 'react';
import { later } from '../base/later.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { saveDrafts } from '../drafts/drafts.ts';
import { measuresState, tablesState } from '../state/clipState.ts';
import { cursorState } from '../state/cursorState.ts';
import { reviewState } from '../state/reviewState.ts';
import { settleNaming } from './commands/flagging.ts';
import { hideGhost } from './commands/looking.ts';
import { showPanel } from './commands/measuring.ts';
import { followPlayhead, goToFirstRep, settleCursor } from './commands/moving.ts';
import { applyLoop } from './commands/repeating.ts';
import type { ReviewContext } from './commands/reviewContext.ts';
import { playhead } from './state/playerState.ts';

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

/** Tells when the clip on the stage gets its first reps: by measuring it, or by hand. */
function watchFirstReps(context: ReviewContext): () => void {
  let before: { readonly clipId: string; readonly reps: number } | null = null;
  return () => {
    const clip = context.stage?.clip;
    const now = clip === undefined ? null : { clipId: clip.id, reps: clip.reps.length };
    if (now !== null && now.clipId === before?.clipId && before.reps === 0 && now.reps > 0) goToFirstRep(context);
    before = now;
  };
}

/** What runs while a session is open: its stores, its cursor and its measures follow each other. */
export function useReviewLife(context: ReviewContext): void {
  const { sessionId } = context;
  useEffect(() => {
    void reviewState.getState().open(sessionId);
    const measures = followMeasures();
    const onFirstReps = watchFirstReps(context);
    const onReview = (): void => {
      const { clipId } = reviewState.getState();
      if (clipId !== null && isReady(clipId)) void tablesState.getState().load(clipId);
      measures.follow();
      settleNaming(context);
      settleCursor(context);
      onFirstReps();
      applyLoop(context);
    };
    const onPlayhead = (): void => {
      followPlayhead(context);
      rememberPosition();
    };
    window.addEventListener('pointerdown', context.typing.letGo);
    window.addEventListener('keyup', hideGhost);
    window.addEventListener('blur', hideGhost);
    onReview();
    const stops = [
      reviewState.subscribe(onReview),
      playhead.subscribe(onPlayhead),
      cursorState.subscribe((now, before) => {
        if (now.column !== before.column) applyLoop(context);
        // A fault is named on the card: whoever flags while reading measures needs to see it.
        if (now.namingFlagId !== null && before.namingFlagId === null) showPanel('card');
      }),
    ];
    return () => {
      for (const stop of stops) stop();
      measures.stop();
      window.removeEventListener('pointerdown', context.typing.letGo);
      context.typing.release();
      statusState.getState().forgetLast();
      window.removeEventListener('keyup', hideGhost);
      window.removeEventListener('blur', hideGhost);
      void saveDrafts();
      saveLastPosition();
    };
  }, [context, sessionId]);
}

let callOff: (() => void) | null = null;
let sent = '';

/** Tells the backend where the coach is. It is no act: it never shows as saving, and nothing is lost where it fails. */
export function saveLastPosition(): void {
  callOff?.();
  callOff = null;
  const { sessionId, clipId } = reviewState.getState();
  const now = playhead.getState();
  if (sessionId === null || clipId === null || now.clipId !== clipId || !now.settled) return;
  const position = `${sessionId}/${clipId}/${now.frame}`;
  if (position === sent) return;
  sent = position;
  void rackside().ask('position.set', { sessionId, clipId, frame: now.frame });
}

/** Saves the position once the coach has stayed there a moment. */
function rememberPosition(): void {
  callOff?.();
  callOff = later(600, saveLastPosition);
}
