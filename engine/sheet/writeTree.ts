import type { Block, Inline } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { CriterionScore, EntryGrade } from '../grading/grade.ts';
import { withinSentence } from '../wording/say.ts';
import { criterionName } from './flagRows.ts';
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
  const criterion = criterionName(catalogue, lowest.criterion);
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
      criterionName(catalogue, score.criterion),
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
