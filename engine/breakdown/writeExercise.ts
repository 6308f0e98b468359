import { type Block, type Table, text } from '../document/document.ts';
import type { CriterionScore, EntryGrade, GradeState } from '../grading/grade.ts';
import { criterionName, exerciseName } from '../sheet/flagRows.ts';
import type { Source } from './source.ts';
import { writeRaises } from './writeRaises.ts';

/** A grade in a few words: "B (84.2)". */
export function sayGrade(state: GradeState, { sheet, say }: Source): string {
  if (state.kind === 'none') return sheet.say('noGrade');
  const { mark, score } = state;
  return say('gradeCell', {
    mark: state.kind === 'provisional' ? sheet.say('provisional', { mark }) : mark,
    score: sheet.format.score(score),
  });
}

/** The criteria that can be judged, each with its bar. */
function criteriaTable(scores: readonly CriterionScore[], grade: EntryGrade, id: string, source: Source): Table {
  const { catalogue, sheet, say } = source;
  const { format } = sheet;
  return {
    kind: 'table',
    id: `${id}-criteria`,
    caption: say('criteriaCaption', {
      exercise: exerciseName(catalogue, grade.exercise),
      coverage: format.percent(grade.coverage),
    }),
    columns: [
      { label: sheet.say('criterion'), align: 'start' },
      { label: sheet.say('score'), align: 'end' },
      { label: sheet.say('share'), align: 'end' },
    ],
    rows: scores.map(({ criterion, score, share }) => [
      [text(criterionName(catalogue, criterion, grade.exercise))],
      [text(score === null ? sheet.say('notLookedAt') : format.score(score))],
      [text(format.percent(share))],
    ]),
    bars: { column: 1, shares: scores.map(({ score }) => (score === null ? null : score / 100)) },
  };
}

/** One exercise: its grade, what was done, a bar for each criterion, what its view doesn't show, what would raise it. */
export function writeExercise(grade: EntryGrade, id: string, source: Source): Block[] {
  const { catalogue, sheet, say, workOfEntry } = source;
  const shown = grade.criteria.filter(({ applicable, score }) => applicable || score !== null);
  const hidden = grade.criteria.filter((criterion) => !shown.includes(criterion));
  const notShown = say('notShown', {
    criteria: sheet.format.list(hidden.map(({ criterion }) => criterionName(catalogue, criterion, grade.exercise))),
  });
  const exercise = exerciseName(catalogue, grade.exercise);
  const work = workOfEntry(grade.entryId);
  return [
    {
      kind: 'heading',
      level: 2,
      id,
      text: say('gradeOf', { exercise, grade: sayGrade(grade.state, source) }),
    },
    ...(work === '' ? [] : [{ kind: 'paragraph' as const, id: `${id}-work`, inlines: [text(work)] }]),
    ...(shown.length === 0 ? [] : [criteriaTable(shown, grade, id, source)]),
    ...(hidden.length === 0 ? [] : [{ kind: 'paragraph' as const, id: `${id}-not-shown`, inlines: [text(notShown)] }]),
    ...writeRaises(grade, { entries: [grade], findings: [] }, id, source),
  ];
}
