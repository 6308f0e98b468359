import { type Block, type Inline, sentence, stamp, text, tidy, upperFirst } from '../document/index.ts';
import type { FlagRow } from './flagRows.ts';
import { fill, type SheetLanguage } from './sheetLanguage.ts';

const line = (words: string): Inline[] => (tidy(words) === '' ? [] : [text(tidy(words))]);

function timeCell(row: FlagRow, { words, format }: SheetLanguage): Inline[] {
  const time = row.us === null ? text(words.noTime) : stamp(row.clip, row.us, format.clock(row.us));
  return row.frame === null ? [time] : [time, text(` ${fill(words.frame, { frame: String(row.frame) })}`)];
}

/** The remarks on one exercise in their order; the clip is named where the exercise has several. */
export function writeFlags(
  rows: readonly FlagRow[],
  { id, exercise, clips }: { readonly id: string; readonly exercise: string; readonly clips: number },
  sheet: SheetLanguage,
): Block {
  const { words, weightLine } = sheet;
  const clipColumn = clips > 1 ? [{ label: words.clip, align: 'start' } as const] : [];
  return {
    kind: 'table',
    id,
    caption: fill(words.flagsCaption, { exercise }),
    columns: [
      { label: words.time, align: 'start' },
      ...clipColumn,
      { label: words.rep, align: 'start' },
      { label: words.criterion, align: 'start' },
      { label: words.weight, align: 'start' },
      { label: words.seen, align: 'start' },
      { label: words.cue, align: 'start' },
    ],
    rows: rows.map((row) => [
      timeCell(row, sheet),
      ...(clips > 1 ? [line(row.clipName)] : []),
      [text(row.reps?.join(', ') ?? words.wholeSet)],
      line(row.criterionName),
      [text(weightLine(row.weight))],
      line([upperFirst(sentence(row.seen)), sentence(row.note)].join(' ')),
      line(row.cue),
    ]),
  };
}
