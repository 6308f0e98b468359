import type { Block } from '../document/document.ts';
import { sentence, tidy } from '../document/tidy.ts';
import type { FlagRow } from './flagRows.ts';
import type { SheetExtras } from './sheetExtras.ts';
import { type SheetLanguage, sayReps } from './sheetLanguage.ts';

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
  const { say, weightText } = sheet;
  return rows.flatMap((row): Block[] => {
    const source = stills?.get(row.flagId);
    const number = numbers.get(row.flagId);
    if (source === undefined || number === undefined) return [];
    const name = say('stillName', { number: String(number) });
    const remark = [sayReps(row, sheet), tidy(row.criterionName), weightText(row.weight)].join(' · ');
    const seen = [sentence(row.seen), sentence(row.note)].filter((each) => each !== '').join(' ');
    const shown = { clip: tidy(row.clipName), time: timeOf(row, sheet) };
    return [
      {
        kind: 'picture',
        id: `still-${row.flagId}`,
        source,
        alt: `${say('stillAlt', shown)} ${seen === '' ? sentence(remark) : seen}`,
        caption: `${name} · ${shown.time} · ${remark}`,
      },
    ];
  });
}
