import { create } from 'zustand';
import type { ClipMedia } from '../../electron/contract/clips.ts';
import type { KeptCover } from '../../electron/contract/covers.ts';
import type { Result } from '../../electron/contract/requests.ts';
import type { HistoryState } from '../../electron/contract/shapes.ts';
import type { SessionGrade } from '../../engine/grading/grade.ts';
import { gradeSession } from '../../engine/grading/gradeSession.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import type { Review } from '../../engine/review/review.ts';
import { read } from '../bridge/read.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { catalogueState } from './catalogueState.ts';
import { oneReadAtATime } from './oneReadAtATime.ts';

export type Position = { readonly clipId: string; readonly frame: number };

export type ReviewData = {
  readonly review: Review;
  readonly media: readonly ClipMedia[];
  /** What is covered in the clips. */
  readonly covers: readonly KeptCover[];
  readonly history: HistoryState;
  /** It came from another coach's Rackside: it is only read here. */
  readonly readOnly: boolean;
  /** The session it judges again, blind; null for a session of its own. */
  readonly secondLookOf: string | null;
  readonly names: NameMode;
  readonly grade: SessionGrade;
};

type ReviewState = {
  readonly sessionId: string | null;
  /** null until the session has been read. */
  readonly data: ReviewData | null;
  /** The session could not be read; the status line says why. */
  readonly unread: boolean;
  /** The clip on the stage. */
  readonly clipId: string | null;
  /** Where to go once that clip is on the stage. */
  readonly pendingSeek: Position | null;
  /** Rises with every change read, so that previews know when they are old. */
  readonly revision: number;
  readonly open: (sessionId: string) => Promise<void>;
  readonly refresh: () => Promise<void>;
  /** Puts a clip on the stage, at a frame. */
  readonly show: (position: Position) => void;
  readonly reached: () => void;
};

/** Where a session opens the first time: the start of the first clip's first rep, or of the clip. */
function firstPosition(review: Review): Position | null {
  const clip = review.entries.flatMap((entry) => entry.clips)[0];
  if (clip === undefined) return null;
  const start = clip.reps[0]?.start;
  return { clipId: clip.id, frame: start !== undefined && 'frame' in start ? start.frame : 0 };
}

const closed = { data: null, unread: false, clipId: null, pendingSeek: null };

/** The session under review, as the backend has it; graded here with the engine's own arithmetic. */
export const reviewState = create<ReviewState>()((set, get) => {
  const failed = (sessionId: string): void => {
    if (get().sessionId === sessionId) set({ unread: true });
  };
  async function readOnce(): Promise<void> {
    const { sessionId } = get();
    if (sessionId === null) return;
    const answer = await read('review.get', { sessionId, language: deskLanguage.getState().language });
    if (answer === null) return failed(sessionId);
    const catalogue = await catalogueState.getState().fetch(answer.review.rubric?.version);
    if (catalogue === null) return failed(sessionId);
    if (get().sessionId !== sessionId) return;
    const review = reviewWithFlagIds(answer.review);
    const clips = review.entries.flatMap((entry) => entry.clips.map((clip) => clip.id));
    const shown = get().clipId;
    const remembered = answer.position !== null && clips.includes(answer.position.clipId) ? answer.position : null;
    const stays = shown !== null && clips.includes(shown);
    const first = firstPosition(review);
    const position = stays ? null : (remembered ?? first);
    catalogueState.getState().show(catalogue);
    set((state) => ({
      data: {
        review,
        media: answer.media,
        covers: answer.covers,
        history: answer.history,
        readOnly: answer.readOnly,
        secondLookOf: answer.secondLookOf,
        names: answer.names,
        grade: gradeSession(review, catalogue, answer.weekBefore),
      },
      unread: false,
      revision: state.revision + 1,
      ...(stays ? {} : { clipId: position?.clipId ?? null, pendingSeek: position }),
    }));
  }

  const refresh = oneReadAtATime(readOnce);
  return {
    sessionId: null,
    ...closed,
    revision: 0,
    open: async (sessionId) => {
      if (get().sessionId !== sessionId) set({ sessionId, ...closed });
      await refresh();
    },
    refresh,
    show: (position) => set({ clipId: position.clipId, pendingSeek: position }),
    reached: () => set({ pendingSeek: null }),
  };
});

/** The review with a name for every flag: those of the library have one, a flag without one by its index. */
export function reviewWithFlagIds(answer: Result<'review.get'>['review']): Review {
  return {
    ...answer,
    entries: answer.entries.map((entry) => ({
      ...entry,
      flags: entry.flags.map((flag, index) => ({ ...flag, id: flag.id ?? `${entry.id}-${index + 1}` })),
    })),
  };
}
