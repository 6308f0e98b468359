import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import { toldFrame } from '../../../engine/framing/toldTime.ts';
import type { Clip, Entry, Flag } from '../../../engine/review/review.ts';
import { criterionName } from '../../../engine/sheet/flagRows.ts';
import type { FrameTable } from '../../../engine/time/frameTable.ts';
import { clipClock } from '../../player/clipClock.ts';
import { sayFlags } from '../../words/sayFlags.ts';
import { saySeverity } from '../../words/saySeverity.ts';
import { repsWords } from './columns.ts';

type SaidOf = { readonly entry: Entry; readonly catalogue: Catalogue };

/** A flag in a few words: "Adjust: Depth, rep 2". */
export function flagWords(
  { severity, criterion, reps }: Pick<Flag, 'severity' | 'criterion' | 'reps'>,
  { entry, catalogue }: SaidOf,
): string {
  return sayFlags('inShort', {
    severity: saySeverity(`${severity ?? 'note'}Title`),
    criterion: criterionName(catalogue, criterion, entry.exercise),
    reps: repsWords(reps),
  });
}

/** A frame of a clip as people name it: its time and its number. */
export const frameWords = (clip: Pick<Clip, 'section'>, table: FrameTable, frame: number): string =>
  sayFlags('atFrame', { time: clipClock(clip, table, frame), frame: toldFrame(clip, frame) });
