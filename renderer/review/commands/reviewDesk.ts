import { createStore } from 'zustand/vanilla';
import { clipOf, entryOfClip } from '../../../engine/review/parts.ts';
import { statusState } from '../../bridge/statusState.ts';
import { saveDrafts } from '../../drafts/drafts.ts';
import type { Player } from '../../player/player.ts';
import { catalogueState } from '../../state/catalogueState.ts';
import { measuresState, tablesState } from '../../state/clipState.ts';
import { cursorState } from '../../state/cursorState.ts';
import { jobsState } from '../../state/jobsState.ts';
import { type ReviewData, reviewState } from '../../state/reviewState.ts';
import { framingState } from '../state/framingState.ts';
import { layoutState } from '../state/layoutState.ts';
import { narrationState } from '../state/narrationState.ts';
import { panelState, suggestionState } from '../state/panelState.ts';
import { coverState, drawingState, setUpState } from '../state/pictureTools.ts';
import { playerState, playhead } from '../state/playerState.ts';
import { layersState, zoomState } from '../state/viewState.ts';
import { goOnFromReview } from './goingOn.ts';
import { createLanding } from './landing.ts';
import { isUnderWay, openMeasuring } from './measuring.ts';
import type { OnStage, ReviewContext } from './reviewContext.ts';
import { createTypeAhead } from './typeAhead.ts';

/** The context of a review, with what keeps it in step. */
export type ReviewDesk = {
  readonly context: ReviewContext;
  /** The stage hands over its player while a clip can play. */
  readonly setPlayer: (player: Player | null) => void;
  /** Calls back when something changes that commands depend on; the returned function stops that. */
  readonly subscribe: (onChange: () => void) => () => void;
};

function onStage(data: ReviewData | null): OnStage | null {
  const { clipId } = reviewState.getState();
  const { catalogue } = catalogueState.getState();
  if (data === null || clipId === null || catalogue === null) return null;
  const entry = entryOfClip(data.review, clipId);
  const clip = entry === undefined ? undefined : clipOf(entry, clipId);
  const grade = data.grade.entries.find((known) => known.entryId === entry?.id);
  if (entry === undefined || clip === undefined || grade === undefined) return null;
  return {
    entry,
    grade,
    exercise: catalogue.exercises.find((known) => known.id === entry.exercise) ?? null,
    catalogue,
    clip,
    tables: tablesState.getState().tables[clipId] ?? null,
  };
}

const slices = [
  statusState,
  catalogueState,
  jobsState,
  measuresState,
  narrationState,
  reviewState,
  tablesState,
  coverState,
  framingState,
  cursorState,
  drawingState,
  layersState,
  layoutState,
  panelState,
  playerState,
  setUpState,
  suggestionState,
  zoomState,
] as const;

/** Builds the context of a session's review from the stores and the stage's player. */
export function createReviewDesk(sessionId: string, focus: ReviewContext['focus']): ReviewDesk {
  const held = createStore<{ readonly player: Player | null }>()(() => ({ player: null }));
  const landing = createLanding();
  const context: ReviewContext = {
    sessionId,
    focus,
    typing: createTypeAhead(),
    landing,
    saveDrafts: async () => {
      await landing.ended();
      await saveDrafts();
    },
    goOn: () => goOnFromReview(context),
    setSpeed: (speed) => {
      playerState.setState({ speed });
      held.getState().player?.setSpeed(speed);
    },
    get data() {
      const now = reviewState.getState();
      return now.sessionId === sessionId ? now.data : null;
    },
    get readOnly() {
      return context.data?.readOnly === true;
    },
    get secondLook() {
      return context.data !== null && context.data.secondLookOf !== null;
    },
    get graded() {
      return context.data !== null && context.data.grade.state.kind !== 'none';
    },
    get history() {
      return context.data?.history ?? null;
    },
    get saving() {
      return landing.isUnderWay() || statusState.getState().saving === 'saving';
    },
    get stage() {
      return onStage(context.data);
    },
    get atHand() {
      const { data, stage, readOnly } = context;
      if (data === null || stage === null) return null;
      return { kind: 'clip' as const, clip: stage.clip, entry: stage.entry, review: data.review, sessionId, readOnly };
    },
    get player() {
      return held.getState().player;
    },
    get playing() {
      return playerState.getState().playing;
    },
    get speed() {
      return playerState.getState().speed;
    },
    get playback() {
      return playerState.getState();
    },
    get frame() {
      return playhead.getState().frame;
    },
    get cursor() {
      return cursorState.getState();
    },
    get measures() {
      const { clipId, measures } = measuresState.getState();
      return clipId === reviewState.getState().clipId ? measures : null;
    },
    get measuring() {
      const { clipId } = reviewState.getState();
      return clipId !== null && isUnderWay(openMeasuring(jobsState.getState().jobs, clipId));
    },
  };
  return {
    context,
    setPlayer: (player) => held.setState({ player }),
    subscribe: (onChange) => {
      const stops = [held, ...slices].map((slice) => slice.subscribe(onChange));
      return () => {
        for (const stop of stops) stop();
      };
    },
  };
}
