import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { Raise, SessionGrade } from '../grading/grade.ts';
import { sayFinding } from '../wording/sayGrade.ts';
import { criterionName, exerciseName } from './flagRows.ts';
import type { SheetLanguage } from './sheetLanguage.ts';

/** What a raise is about: the grade's entries and findings that its ids lead to. */
export type RaiseSource = Pick<SessionGrade, 'entries' | 'findings'>;

/** A raise in words: what would be gone, and the exercises that it lies in. */
export type SaidRaise = { readonly what: string; readonly exercises: readonly string[] };

function sayWhat(raise: Raise, of: RaiseSource, catalogue: Catalogue, { say, language }: SheetLanguage): string {
  switch (raise.kind) {
    case 'group': {
      const id = of.entries.find(({ entryId }) => entryId === raise.entryId)?.exercise ?? '';
      const fault = findExercise(catalogue, id)?.faults.find((each) => each.id === raise.fault);
      return fault?.name ?? criterionName(catalogue, raise.criterion, id);
    }
    case 'stops':
      return say('stopsTogether', { count: raise.groups });
    case 'finding': {
      const finding = of.findings.find(({ id }) => id === raise.findingId);
      return finding === undefined ? say('programme') : sayFinding(finding, language).what;
    }
  }
}

/** Says a raise in the sheet's language: a fault's name, all stops together, or what was found about the plan. */
export function sayRaise(raise: Raise, of: RaiseSource, catalogue: Catalogue, sheet: SheetLanguage): SaidRaise {
  const exercises = raise.entryIds.flatMap((id) => {
    const entry = of.entries.find(({ entryId }) => entryId === id);
    return entry === undefined ? [] : [exerciseName(catalogue, entry.exercise)];
  });
  return { what: tidy(sayWhat(raise, of, catalogue, sheet)), exercises: [...new Set(exercises)] };
}
