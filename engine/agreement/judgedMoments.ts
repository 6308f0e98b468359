import type { Catalogue } from '../exercises/catalogue.ts';
import type { RepScore } from '../grading/grade.ts';
import { gradeSession } from '../grading/gradeSession.ts';
import type { Review } from '../review/review.ts';
import { type CriterionId, type Weight, weights } from '../rubric/rubric.ts';

/** What a reviewer said of one criterion on one rep: the heaviest remark, `keep` for praise or a tick. */
export type Verdict = { readonly weight: Weight; readonly score: number };

/** One criterion on one rep; `rep` is null for a set without marked reps. */
export type CriterionOnRep = {
  readonly entryId: string;
  readonly exercise: string;
  readonly clip: string;
  readonly rep: number | null;
  readonly criterion: CriterionId;
};

/** One reviewer's verdict on a moment. */
export type Judged = CriterionOnRep & { readonly verdict: Verdict };

/** What a reviewer looked at, each under a key that is the same in another review of the same clips. */
export function momentsOf(review: Review, catalogue: Catalogue): ReadonlyMap<string, Judged> {
  const moments = new Map<string, Judged>();
  for (const { entryId, exercise, criteria } of gradeSession(review, catalogue).entries) {
    for (const { criterion, lookedAt, reps } of criteria) {
      if (!lookedAt) continue;
      for (const judged of reps) {
        const { clip, rep } = judged;
        moments.set(JSON.stringify([entryId, clip, rep, criterion]), {
          ...{ entryId, exercise, clip, rep, criterion },
          verdict: verdictOf(judged),
        });
      }
    }
  }
  return moments;
}

function verdictOf(rep: RepScore): Verdict {
  const heaviest = Math.max(0, ...rep.flags.map((flag) => weights.indexOf(flag.weight)));
  return { weight: weights[heaviest] ?? 'keep', score: rep.score };
}
