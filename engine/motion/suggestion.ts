import type { Message } from '../message/message.ts';
import type { WarningId } from '../recording/warnings.ts';

/** What a suggestion can say: a miss as one rep shows it, or praise of all of them. */
export type SuggestionMessageId =
  | 'eccentricTime'
  | 'eccentricQuicker'
  | 'speedDips'
  | 'lastThirdDrops'
  | 'pauseTime'
  | 'pauseShorter'
  | 'turnsRound'
  | 'holdTime'
  | 'creaseAboveKnee'
  | 'rangeShorter'
  | 'turnsEarly'
  | 'leavesPath'
  | 'goesBack'
  | 'headMoves'
  | 'everyEccentric'
  | 'everyPause'
  | 'everyHold'
  | 'everyPath'
  | 'everyDepth'
  | 'everyHead';

/** A flag proposed from a measure; not a flag until a person accepts it. */
export type Suggestion = {
  /** The same for the same finding on the same clip, however often it is measured. */
  readonly id: string;
  readonly criterion: string;
  readonly fault: string | null;
  readonly severity: 'keep' | 'prefer' | 'adjust' | 'correct' | 'stop';
  /** Reps by index, ascending. */
  readonly reps: readonly number[];
  /** Media seconds of the moment to look at: that of the rep that shows it most. */
  readonly atS: number;
  /** The number behind it, for the rep that shows it most. */
  readonly measure: {
    readonly name: string;
    readonly value: number;
    readonly plusMinus: number;
    readonly unit: 's' | 'm' | 'deg' | 'm/s' | '%' | 'times';
  };
  /** What it says, with the numbers rounded as they are printed. */
  readonly message: Message<SuggestionMessageId>;
};

/** What measuring has to say, in a sheet or a note. */
export type MeasuringMessageId = WarningId | SuggestionMessageId;
