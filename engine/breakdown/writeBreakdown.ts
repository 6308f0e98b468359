import { heldBack } from '../cautions/heldBack.ts';
import { type RacksideDocument, type Table, text } from '../document/document.ts';
import { workOfEntries } from '../document/sayWork.ts';
import { tidy } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { GradeState, SessionGrade } from '../grading/grade.ts';
import type { Review } from '../review/review.ts';
import { exerciseName } from '../sheet/flagRows.ts';
import { sheetLanguage } from '../sheet/sheetLanguage.ts';
import { writeGradeNotes } from '../sheet/writeGrades.ts';
import { breakdownWording, sayerOf } from '../wording/wordings.ts';
import type { Source } from './source.ts';
import { sayGrade, writeExercise } from './writeExercise.ts';
import { writeRaises } from './writeRaises.ts';
import { writeRule } from './writeRule.ts';

type Row = {
  readonly part: string;
  /** What stands in the column of scores, and the length of its bar; null = none. */
  readonly shown: string;
  readonly score: number | null;
  readonly grade: string;
  readonly coverage: string;
};

const scoreOf = (state: GradeState): number | null => (state.kind === 'none' ? null : state.score);

/** Exercises, technique, programme and the session, each with its bar. */
function sessionTable(grade: SessionGrade, source: Source): Table {
  const { catalogue, sheet, say } = source;
  const { format } = sheet;
  const shown = (score: number | null): string => (score === null ? sheet.say('noGrade') : format.score(score));
  const part = (name: string, score: number | null): Row[] =>
    score === null ? [] : [{ part: name, shown: shown(score), score, grade: '', coverage: '' }];
  const cost = (points: number): Row => ({
    part: sheet.say('programme'),
    shown: points === 0 ? say('nothingOff') : say('pointsOff', { points: format.score(points) }),
    score: null,
    grade: '',
    coverage: '',
  });
  const rows: readonly Row[] = [
    ...grade.entries.map(
      (entry): Row => ({
        part: exerciseName(catalogue, entry.exercise),
        shown: shown(scoreOf(entry.state)),
        score: scoreOf(entry.state),
        grade: sayMark(entry.state, source),
        coverage: format.percent(entry.coverage),
      }),
    ),
    ...part(say('technique'), grade.technique),
    ...(grade.programmeCost === null ? part(sheet.say('programme'), grade.programme) : [cost(grade.programmeCost)]),
    {
      part: sheet.say('session'),
      shown: shown(scoreOf(grade.state)),
      score: scoreOf(grade.state),
      grade: sayMark(grade.state, source),
      coverage: '',
    },
  ];
  return {
    kind: 'table',
    id: 'session-scores',
    caption: say('sessionCaption'),
    columns: [
      { label: say('part'), align: 'start' },
      { label: sheet.say('score'), align: 'end' },
      { label: sheet.say('grade'), align: 'start' },
      { label: sheet.say('coverage'), align: 'end' },
    ],
    rows: rows.map((row) => [row.part, row.shown, row.grade, row.coverage].map((cell) => [text(cell)])),
    bars: { column: 1, shares: rows.map(({ score }) => (score === null ? null : score / 100)) },
  };
}

function sayMark(state: GradeState, { sheet }: Source): string {
  if (state.kind === 'none') return sheet.say('noGrade');
  const { mark } = state;
  return state.kind === 'provisional' ? sheet.say('provisional', { mark }) : mark;
}

/**
 * How the grades of a session come about, made to fit one page where the session has few exercises: scores, a bar for
 * each criterion, what would raise them. `grade` is the grade of this review under this catalogue's rubric. It
 * speaks the catalogue's language.
 */
export function writeBreakdown(review: Review, grade: SessionGrade, catalogue: Catalogue): RacksideDocument {
  const sheet = sheetLanguage(catalogue.language ?? 'en');
  const say = sayerOf(breakdownWording, sheet.language);
  const workOfEntry = workOfEntries(review, catalogue, sheet.language);
  const source: Source = { catalogue, sheet, say, workOfEntry, held: heldBack(review, catalogue) };
  const trainee = tidy(review.trainee.name);
  const session = say('gradeOf', { exercise: sheet.say('session'), grade: sayGrade(grade.state, source) });
  return {
    title: say('title', { voice: review.voice, trainee, date: sheet.format.date(review.session.date) }),
    language: sheet.language,
    author: review.voice === 'self' ? trainee : tidy(review.coach ?? ''),
    date: review.session.date,
    fits: 'onePage',
    blocks: [
      { kind: 'heading', level: 2, id: 'session', text: session },
      sessionTable(grade, source),
      ...writeGradeNotes({ ...grade, technique: null }, catalogue, sheet),
      ...(grade.raises.some(({ kind }) => kind !== 'group') ? writeRaises(grade, grade, 'session', source) : []),
      ...grade.entries.flatMap((entry, index) => writeExercise(entry, `exercise-${index + 1}`, source)),
      writeRule(grade, source),
    ],
  };
}
