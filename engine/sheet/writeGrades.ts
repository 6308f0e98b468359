import { type Block, type Inline, text } from '../document/document.ts';
import { workOfEntries } from '../document/sayWork.ts';
import { sentence, upperFirst } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { EntryGrade, GradeState, SessionGrade } from '../grading/grade.ts';
import { toldRange } from '../grading/toldRange.ts';
import type { Review } from '../review/review.ts';
import { sayMissingGrade } from '../wording/sayGrade.ts';
import { exerciseName } from './flagRows.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

const markOf = (state: GradeState, { say }: SheetLanguage): string => {
  switch (state.kind) {
    case 'none':
      return say('noGrade');
    case 'provisional':
      return say('provisional', { mark: state.mark });
    case 'graded':
      return state.mark;
  }
};

const scoreOf = (state: GradeState, { format }: SheetLanguage): string =>
  state.kind === 'none' ? '' : format.score(state.score);

/** Between what the grade lies once everything is looked at; '' where it is exact. */
function rangeOf(grade: EntryGrade | SessionGrade, { format }: SheetLanguage): string {
  const range = toldRange(grade);
  return range === null ? '' : `${format.score(range.low)}–${format.score(range.high)}`;
}

/** Work, grade, score, range and coverage of each exercise, and the session's grade. */
export function writeGrades(review: Review, grade: SessionGrade, catalogue: Catalogue, sheet: SheetLanguage): Block {
  const { say, format } = sheet;
  const workOfEntry = workOfEntries(review, catalogue, sheet.language);
  const row = (cells: readonly string[]) => cells.map((cell): Inline[] => [text(cell)]);
  return {
    kind: 'table',
    id: 'grades-table',
    caption: say('gradesCaption'),
    columns: [
      { label: say('exercise'), align: 'start' },
      { label: say('sets'), align: 'start' },
      { label: say('grade'), align: 'start' },
      { label: say('score'), align: 'end' },
      { label: say('range'), align: 'end' },
      { label: say('coverage'), align: 'end' },
    ],
    rows: [
      ...grade.entries.map((entry) =>
        row([
          exerciseName(catalogue, entry.exercise),
          workOfEntry(entry.entryId),
          markOf(entry.state, sheet),
          scoreOf(entry.state, sheet),
          rangeOf(entry, sheet),
          format.percent(entry.coverage),
        ]),
      ),
      row([say('session'), '', markOf(grade.state, sheet), scoreOf(grade.state, sheet), rangeOf(grade, sheet), '']),
    ],
  };
}

/** A grade set by hand, its reason, and what the flags alone say. */
function sayByHand(
  { state, override }: Pick<EntryGrade, 'state' | 'override'>,
  exercise: string,
  sheet: SheetLanguage,
): string[] {
  if (override === null) return [];
  const { say, format } = sheet;
  const { computed } = override;
  const values = { exercise, mark: markOf(state, sheet), reason: upperFirst(sentence(override.reason)) };
  if (computed.kind === 'none') return [say('byHandNone', values)];
  const mark = `${markOf(computed, sheet)} (${format.score(computed.score)})`;
  return [say('byHand', { ...values, computed: mark })];
}

/** What the session's grade is made of, where a plan is known. */
function sayParts({ technique, programme, programmeCost }: SessionGrade, { say, format }: SheetLanguage): string[] {
  if (technique === null || programme === null) return [];
  const stands = format.score(technique);
  return programmeCost === null
    ? [say('parts', { technique: stands, programme: format.score(programme) })]
    : [say('partsByCost', { technique: stands, cost: programmeCost })];
}

/** Why a grade is missing or held down, and what the session's grade is made of. */
export function writeGradeNotes(grade: SessionGrade, catalogue: Catalogue, sheet: SheetLanguage): Block[] {
  const { say, format } = sheet;
  const notes = [
    ...sayParts(grade, sheet),
    ...(grade.cappedByStop ? [say('capped', { cap: format.score(catalogue.rubric.stopCap.session) })] : []),
    ...sayByHand(grade, say('session'), sheet),
    ...grade.entries.flatMap((entry) => sayByHand(entry, exerciseName(catalogue, entry.exercise), sheet)),
    ...grade.entries.flatMap((entry) =>
      entry.state.kind === 'none'
        ? [
            say('noReason', {
              exercise: exerciseName(catalogue, entry.exercise),
              reason: sayMissingGrade(entry.state.reason, sheet.language),
            }),
          ]
        : [],
    ),
  ];
  return notes.map((note, index) => ({ kind: 'paragraph', id: `grades-note-${index + 1}`, inlines: [text(note)] }));
}
