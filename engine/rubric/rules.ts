import type { Rubric, Severity } from './rubric.ts';

/** How an exercise's score is put together: `lowest` in the order of the rubric. */
export type ExerciseRule = NonNullable<Rubric['exerciseScore']>;

/** The rule of an exercise's score; `lowestShare` L is the mean with 1 − L and the lowest criterion with L, to 100. */
export function exerciseRule({ exerciseScore, lowestShare = 0 }: Rubric): ExerciseRule {
  return exerciseScore ?? { meanShare: 1 - lowestShare, lowest: [{ rank: 1, under: 100, share: lowestShare }] };
}

/** How the programme counts in a session: by a share of the score, or by points off for each finding. */
export type ProgrammeRule =
  | { readonly kind: 'share'; readonly technique: number; readonly programme: number }
  | { readonly kind: 'cost'; readonly cost: Readonly<Record<Severity, number>>; readonly most: number };

/** The rule by which the programme counts in a session. */
export function programmeRule({ sessionShare, programmeCost }: Rubric): ProgrammeRule {
  if (programmeCost === undefined) return { kind: 'share', ...(sessionShare ?? { technique: 1, programme: 0 }) };
  const { most, ...cost } = programmeCost;
  return { kind: 'cost', cost, most };
}
