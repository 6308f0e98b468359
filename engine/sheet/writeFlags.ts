import { type Block, type Inline, stamp, text } from '../document/document.ts';
import { sentence, tidy, upperFirst } from '../document/words.ts';
import type { FlagRow } from './flagRows.ts';
import type { SheetExtras } from './sheetExtras.ts';
import { type SheetLanguage, sayReps } from './sheetLanguage.ts';

const line = (words: string): Inline[] => (tidy(words) === '' ? [] : [text(tidy(words))]);

function timeCell(row: FlagRow, { say, format }: SheetLanguage): Inline[] {
  const time = row.us === null ? text(say('noTime')) : stamp(row.clip, row.us, format.clock(row.us));
  return row.frame === null ? [time] : [time, text(` ${say('frame', { frame: String(row.frame) })}`)];
}

type FlagTable = {
  readonly id: string;
  readonly exercise: string;
  /** How many clips the exercise has. */
  readonly clips: number;
  /** Numbers of the stills, by the flag's id. */
  readonly stills: ReadonlyMap<string, number>;
};

/** Which still shows the flag. */
function stillCell({ flagId }: FlagRow, stills: ReadonlyMap<string, number>): Inline[] {
  const number = stills.get(flagId);
  return number === undefined ? [] : [text(String(number))];
}

/** The table of remarks on one exercise, with a column for clips where it has several and for stills where there are any. */
export function writeFlags(
  rows: readonly FlagRow[],
  { id, exercise, clips, stills }: FlagTable,
  sheet: SheetLanguage,
): Block {
  const { say, severityLine } = sheet;
  const clipColumn = clips > 1 ? [{ label: say('clip'), align: 'start' } as const] : [];
  const anyStill = rows.some(({ flagId }) => stills.has(flagId));
  const stillColumn = anyStill ? [{ label: say('still'), align: 'start' } as const] : [];
  return {
    kind: 'table',
    id,
    caption: say('flagsCaption', { exercise }),
    columns: [
      { label: say('time'), align: 'start' },
      ...clipColumn,
      { label: say('rep'), align: 'start' },
      { label: say('criterion'), align: 'start' },
      { label: say('severity'), align: 'start' },
      { label: say('seen'), align: 'start' },
      { label: say('cue'), align: 'start' },
      ...stillColumn,
    ],
    rows: rows.map((row) => [
      timeCell(row, sheet),
      ...(clips > 1 ? [line(row.clipName)] : []),
      [text(row.reps?.join(', ') ?? say('wholeSet'))],
      line(row.criterionName),
      [text(severityLine(row.severity))],
      line([upperFirst(sentence(row.seen)), sentence(row.note)].join(' ')),
      line(row.cue),
      ...(anyStill ? [stillCell(row, stills)] : []),
    ]),
  };
}

/** The stills of a sheet counted from 1 in the order of its flags, by the flag's id. */
export function numberStills(rows: readonly FlagRow[], { stills }: SheetExtras): ReadonlyMap<string, number> {
  const shown = rows.filter(({ flagId }) => stills?.has(flagId) === true);
  return new Map(shown.map(({ flagId }, index) => [flagId, index + 1]));
}

const timeOf = ({ us }: FlagRow, { say, format }: SheetLanguage): string =>
  us === null ? say('noTime') : format.clock(us);

/** The stills of some flags, each with alternative text. */
export function writeStills(
  rows: readonly FlagRow[],
  numbers: ReadonlyMap<string, number>,
  { stills }: SheetExtras,
  sheet: SheetLanguage,
): Block[] {
  const { say, severityLine } = sheet;
  return rows.flatMap((row): Block[] => {
    const source = stills?.get(row.flagId);
    const number = numbers.get(row.flagId);
    if (source === undefined || number === undefined) return [];
    const name = say('stillName', { number: String(number) });
    const remark = [sayReps(row, sheet), tidy(row.criterionName), severityLine(row.severity)].join('\u00A0· ');
    const seen = [sentence(row.seen), sentence(row.note)].filter((each) => each !== '').join(' ');
    const shown = { clip: tidy(row.clipName), time: timeOf(row, sheet) };
    return [
      {
        kind: 'picture',
        id: `still-${row.flagId}`,
        source,
        alt: `${say('stillAlt', shown)} ${seen === '' ? sentence(remark) : seen}`,
        caption: [`${name}\u00A0· ${shown.time}\u00A0· ${remark}`, ...(seen === '' ? [] : [upperFirst(seen)])].join(
          '. ',
        ),
      },
    ];
  });
}
