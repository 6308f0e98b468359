import type { Exercise, Goal } from '../../../engine/exercises/exercise.ts';
import type { ProgrammeFinding } from '../../../engine/programme/finding.ts';
import { programmeFindings } from '../../../engine/programme/findings.ts';
import type { PlannedSet } from '../../../engine/review/plan.ts';
import type { Entry, Review } from '../../../engine/review/review.ts';
import { sayFinding } from '../../../engine/wording/sayGrade.ts';
import { catalogueOf } from '../catalogue.ts';
import { review } from '../reviews.ts';

/** So many equal sets. */
export const sets = (count: number, reps: number, more: Partial<PlannedSet> = {}): PlannedSet[] =>
  Array.from({ length: count }, () => ({ reps, ...more }));

/** A planned entry of an exercise that was not filmed; its id is the exercise's. */
export const planned = (exercise: string, own: readonly PlannedSet[], change: Partial<Entry> = {}): Entry => ({
  id: exercise,
  exercise,
  plan: { sets: [...own] },
  clips: [],
  flags: [],
  ticks: [],
  ...change,
});

/** Who trains, and with what. */
export type Trainee = Partial<Review['trainee']> & { readonly goal?: Goal };

export const sessionOf = (trainee: Trainee, ...entries: readonly Entry[]): Review => {
  const base = review(...entries);
  return { ...base, trainee: { ...base.trainee, ...trainee } };
};

/** What is found in a session of made-up exercises. */
export const foundAmong =
  (...exercises: readonly Exercise[]) =>
  (trainee: Trainee, ...entries: readonly Entry[]): ProgrammeFinding[] =>
    programmeFindings(sessionOf(trainee, ...entries), catalogueOf(...exercises));

export const kindsOf = (findings: readonly ProgrammeFinding[]): string[] => findings.map(({ kind }) => kind);

/** The one finding of a kind. Throws where there is none, or more than one. */
export function only(findings: readonly ProgrammeFinding[], kind: string): ProgrammeFinding {
  const [first, ...others] = findings.filter((one) => one.kind === kind);
  if (first === undefined || others.length > 0) throw new Error(`${kind}: ${kindsOf(findings).join(', ')}`);
  return first;
}

export const inEnglish = (finding: ProgrammeFinding) => sayFinding(finding, 'en');
