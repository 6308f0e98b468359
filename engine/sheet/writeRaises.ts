import type { Block } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import { tidy } from '../document/tidy.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { SessionGrade } from '../grading/grade.ts';
import type { Review } from '../review/review.ts';
import { criterionName, exerciseName } from './flagRows.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

/** Whether a gain is above zero as printed, to two decimals. */
const isGain = (points: number): boolean => Math.round(points * 100) > 0;

const cell = (written: string) => [text(tidy(written))];

/** What would raise the grade: each group of equal remarks with its exact gain, largest first. */
export function writeRaises(
  grade: SessionGrade,
  review: Review,
  catalogue: Catalogue,
  { say, format, weightLine }: SheetLanguage,
): Block[] {
  const raises = grade.raises.filter(({ gain }) => isGain(gain));
  const rows = raises.map((raise) => {
    const entry = review.entries.find((each) => each.id === raise.entryId);
    const fault = catalogue.exercises
      .find((each) => each.id === entry?.exercise)
      ?.faults.find((each) => each.id === raise.fault);
    return [
      cell(fault?.name ?? criterionName(catalogue, raise.criterion)),
      cell(exerciseName(catalogue, entry?.exercise ?? '')),
      [text(weightLine(raise.weight))],
      [text(format.whole(raise.reps))],
      [text(`+${format.exactPoints(raise.gain)}`)],
    ];
  });
  if (rows.length === 0) return [];
  return [
    { kind: 'heading', level: 2, id: 'raises', text: say('raises') },
    {
      kind: 'table',
      id: 'raises-table',
      caption: say('raisesCaption'),
      columns: [
        { label: say('remark'), align: 'start' },
        { label: say('exercise'), align: 'start' },
        { label: say('weight'), align: 'start' },
        { label: say('reps'), align: 'end' },
        { label: say('gain'), align: 'end' },
      ],
      rows,
    },
  ];
}
