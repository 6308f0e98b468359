import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { Exercise } from '../../../engine/exercises/exercise.ts';
import type { EntryGrade } from '../../../engine/grading/grade.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import type { ArrangingContext } from '../../commands/arrangingCommands.ts';
import { type Availability, available, unavailable } from '../../commands/command.ts';
import type { NightContext } from '../../commands/nightCommands.ts';
import type { HistoryContext, SessionContext } from '../../commands/sessionCommands.ts';
import type { PlayingContext } from '../../player/playingCommands.ts';
import type { ClipMeasures, ClipTables } from '../../state/clipState.ts';
import type { CursorState } from '../../state/cursorState.ts';
import type { ReviewData } from '../../state/reviewState.ts';
import { sayReasons } from '../../words/sayReasons.ts';
import type { PlayerState } from '../state/playerState.ts';
import type { Landing } from './landing.ts';
import type { TypeAhead } from './typeAhead.ts';

/** The clip on the stage, with everything that it belongs to. */
export type OnStage = {
  readonly entry: Entry;
  readonly grade: EntryGrade;
  readonly exercise: Exercise | null;
  readonly catalogue: Catalogue;
  readonly clip: Clip;
  /** null until the times of its frames are known. */
  readonly tables: ClipTables | null;
};

/** What the review tells its commands. Everything is as it is now, also after a command has waited for something. */
export type ReviewContext = SessionContext &
  NightContext &
  HistoryContext &
  ArrangingContext &
  PlayingContext & {
    readonly sessionId: string;
    /** null until the session has been read. */
    readonly data: ReviewData | null;
    /** null while no clip is on the stage. */
    readonly stage: OnStage | null;
    /** Where the coach is on the scorecard, and what moves there. */
    readonly cursor: CursorState;
    readonly playback: PlayerState;
    /** The frame on screen. */
    readonly frame: number;
    /** What was measured of the clip on the stage; null until that has been read. */
    readonly measures: ClipMeasures | null;
    /** Whether the clip on the stage is being measured, or waits for it. */
    readonly measuring: boolean;
    /** Keeps what is typed before the field for it is on the page. */
    readonly typing: TypeAhead;
    /** What waits for the picture to stand. */
    readonly landing: Landing;
    readonly focus: {
      /** Puts the focus in the note of a flag as soon as that is on the page; calls back where it does not come. */
      readonly onNote: (flagId: string, isMissing: () => void) => void;
      /** Lets go of the focus, so that the keys are the scorecard's again. */
      readonly backOnCard: () => void;
    };
  };

/** Whether a clip is on the stage. */
export const isOnStage = ({ stage }: ReviewContext): Availability =>
  stage === null ? unavailable(sayReasons('noClip')) : available;

/** Whether the clip on the stage has been read, so that its frames have times. */
export function isReadable(context: ReviewContext): Availability {
  if (context.stage === null) return isOnStage(context);
  return context.stage.tables === null ? unavailable(sayReasons('stillRead')) : available;
}

/** Whether the cursor is in a column of one rep. */
export function isOnRep({ cursor }: ReviewContext): Availability {
  if (cursor.column === null) return unavailable(sayReasons('noCell'));
  return cursor.column.rep === 'set' ? unavailable(sayReasons('wholeSet')) : available;
}
