import type { SuggestionMessageId } from '../motion/suggestion.ts';
import type { WarningId } from '../recording/warnings.ts';

/** What measuring has to say, in a sheet or a note. */
export type MeasuringMessageId = WarningId | SuggestionMessageId;
