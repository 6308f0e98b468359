import type { HeldBack } from '../cautions/heldBack.ts';
import { type Block, type Inline, text } from '../document/document.ts';
import { tidy } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { CriterionScore, EntryGrade, SessionGrade } from '../grading/grade.ts';
import { shownGain } from '../rubric/shownNumbers.ts';
import { withinSentence } from '../wording/wordings.ts';
import { criterionName } from './flagRows.ts';
import { sayRaise } from './sayRaise.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

function scoreCell(score: CriterionScore, { say, format }: SheetLanguage): string {
  if (score.score !== null) return format.score(score.score);
  return score.applicable ? say('notLookedAt') : say('notShown');
}

const repsCell = (score: CriterionScore, { say, format }: SheetLanguage): string =>
  score.score === null
    ? ''
    : score.reps
        .map((rep) =>
          say('repScore', {
            rep: rep.rep === null ? say('wholeSet') : format.whole(rep.rep),
            score: format.score(rep.score),
          }),
        )
        .join('; ');

function sayMean(grade: EntryGrade, catalogue: Catalogue, { language, say, format }: SheetLanguage): Block[] {
  const { lowest, weightedMean } = grade;
  if (lowest === null || weightedMean === null) return [];
  const criterion = criterionName(catalogue, lowest.criterion, grade.exercise);
  const mean = say('lowest', {
    mean: format.score(weightedMean),
    criterion: withinSentence(language, criterion),
    score: format.score(lowest.score),
  });
  return [{ kind: 'paragraph', id: `${grade.entryId}-mean`, inlines: [text(mean)] }];
}

/** How the grade of an exercise comes about: each criterion's share, score and the scores of its reps. */
export function writeTree(
  grade: EntryGrade | undefined,
  id: string,
  exercise: string,
  catalogue: Catalogue,
  sheet: SheetLanguage,
): Block[] {
  if (grade === undefined || grade.criteria.length === 0) return [];
  const { say, format } = sheet;
  const rows = grade.criteria.map((score): Inline[][] =>
    [
      criterionName(catalogue, score.criterion, grade.exercise),
      format.percent(score.share),
      scoreCell(score, sheet),
      repsCell(score, sheet),
    ].map((cell) => [text(cell)]),
  );
  return [
    { kind: 'heading', level: 3, id: `${id}-tree`, text: say('tree', { exercise }) },
    {
      kind: 'table',
      id: `${id}-tree-table`,
      caption: say('treeCaption', { exercise }),
      columns: [
        { label: say('criterion'), align: 'start' },
        { label: say('share'), align: 'end' },
        { label: say('score'), align: 'end' },
        { label: say('reps'), align: 'start' },
      ],
      rows,
    },
    ...sayMean(grade, catalogue, sheet),
  ];
}

/** Whether a gain is above zero as printed, to two decimals. */
const isGain = (points: number): boolean => shownGain(points, 2) > 0;

const cell = (written: string) => [text(tidy(written))];

/**
 * What would raise the grade: each group of equal remarks and each finding with its exact gain, largest first. What pain
 * holds back is left out, and a line says so.
 */
export function writeRaises(grade: SessionGrade, held: HeldBack, catalogue: Catalogue, sheet: SheetLanguage): Block[] {
  const { say, format, severityLine } = sheet;
  const gains = grade.raises.filter(({ gain }) => isGain(gain));
  const raises = gains.filter((raise) => !held.holdsRaise(raise, grade.findings));
  const rows = raises.map((raise) => {
    const { what, exercises } = sayRaise(raise, grade, catalogue, sheet);
    return [
      cell(what),
      cell(format.list(exercises)),
      [text(severityLine(raise.severity))],
      [text(raise.kind === 'finding' ? '' : format.whole(raise.reps))],
      [text(`+${format.exactPoints(raise.gain)}`)],
    ];
  });
  if (gains.length === 0) return [];
  const waits: Block[] =
    raises.length === gains.length
      ? []
      : [{ kind: 'paragraph', id: 'raises-wait', inlines: [text(say('raisesWaitForPain'))] }];
  const heading: Block = { kind: 'heading', level: 2, id: 'raises', text: say('raises') };
  if (rows.length === 0) return [heading, ...waits];
  return [
    heading,
    {
      kind: 'table',
      id: 'raises-table',
      caption: say('raisesCaption'),
      columns: [
        { label: say('remark'), align: 'start' },
        { label: say('exercise'), align: 'start' },
        { label: say('severity'), align: 'start' },
        { label: say('reps'), align: 'end' },
        { label: say('gain'), align: 'end' },
      ],
      rows,
    },
    ...waits,
  ];
}
