import { cautionsDue } from '../cautions/cautionsDue.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { EntryGrade, SessionGrade } from '../grading/grade.ts';
import type { Review } from '../review/review.ts';
import type { Severity } from '../rubric/rubric.ts';
import { cautionWording, sayerOf } from '../wording/wordings.ts';
import { exerciseName, flagRows } from './flagRows.ts';
import { measuredClips } from './measureRows.ts';
import type { SheetExtras } from './sheetExtras.ts';
import type { SheetData } from './sheetJsonSchema.ts';

/** The strokes that programs have always read. */
const strokes = {
  keep: '+',
  prefer: '|',
  adjust: '||',
  correct: '|||',
  stop: '||||',
} as const satisfies Readonly<Record<Severity, string>>;

type Graded = Pick<EntryGrade, 'state' | 'range' | 'override'>;

function gradeOf({ state, range, override }: Graded): SheetData['grade'] {
  const graded = state.kind === 'none' ? null : state;
  return {
    state: state.kind,
    letter: graded?.mark ?? null,
    score: graded?.score ?? null,
    range: range === null ? null : { low: range.low, high: range.high },
    byHand: override?.reason ?? null,
  };
}

/**
 * The sheet as data: grades, every flag as it was written, and what was measured. `grade` is the grade of this review
 * under this catalogue's rubric; names and texts speak the catalogue's language.
 */
export function sheetData(
  review: Review,
  grade: SessionGrade,
  catalogue: Catalogue,
  { measures, stills }: SheetExtras = {},
): SheetData {
  const graded = new Map(grade.entries.map((entry) => [entry.entryId, entry]));
  return {
    format: 'rackside-sheet',
    version: 2,
    language: catalogue.language ?? 'en',
    trainee: review.trainee.name,
    coach: review.voice === 'self' ? null : (review.coach ?? null),
    date: review.session.date,
    rubric: { id: catalogue.rubric.id, name: catalogue.rubric.name, version: grade.rubric.version },
    painNote: review.session.painNote,
    cautions: cautionsDue(review, catalogue).map(({ id, topic, text }) => ({ id, topic, text })),
    closing: sayerOf(cautionWording, catalogue.language ?? 'en')('closing'),
    grade: gradeOf(grade),
    exercises: review.entries.flatMap((entry) => {
      const own = graded.get(entry.id);
      if (own === undefined) return [];
      return [
        {
          entry: entry.id,
          exercise: entry.exercise,
          name: exerciseName(catalogue, entry.exercise),
          sets: own.setsDone,
          planned: entry.plan?.sets ?? null,
          coverage: own.coverage,
          grade: gradeOf(own),
          clips: entry.clips.map(({ id, name, loadKg }) => ({ id, name, loadKg: loadKg ?? null })),
        },
      ];
    }),
    flags: flagRows(review, catalogue).map((row) => ({
      id: row.flagId,
      entry: row.entryId,
      clip: row.clip,
      atS: row.us === null ? null : row.us / 1e6,
      frame: row.frame,
      reps: row.reps === null ? null : [...row.reps],
      criterion: row.criterion,
      criterionName: row.criterionName,
      severity: row.severity,
      strokes: row.severity === null ? null : strokes[row.severity],
      fault: row.fault?.id ?? null,
      seen: row.seen,
      note: row.note,
      cue: row.cue,
      still: stills?.get(row.flagId) ?? null,
    })),
    measures: measuredClips(review, catalogue, measures).map(({ reps, warnings, ...clip }) => ({
      ...clip,
      reps: [...reps],
      warnings: [...warnings],
    })),
  };
}

/** The sheet as the text of a JSON file; its schema is `seeds/sheet.schema.json`. */
export function sheetJson(...sheet: Parameters<typeof sheetData>): string {
  return `${JSON.stringify(sheetData(...sheet), null, 1)}\n`;
}
