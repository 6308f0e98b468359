import type { Catalogue } from '../exercises/catalogue.ts';
import { gradeSession } from '../grading/gradeSession.ts';
import type { Review } from '../review/review.ts';
import type { CriterionId } from '../rubric/rubric.ts';

/** One session of a trainee as a point of a trend; scores null where there was none. */
export type TrendPoint = {
  readonly date: string;
  readonly session: number | null;
  readonly criteria: readonly { readonly criterion: CriterionId; readonly score: number }[];
};

/** A trainee's sessions over time: the session score, and each criterion's mean over the exercises where it was looked at. */
export function trendOf(reviews: readonly Review[], catalogue: Catalogue): TrendPoint[] {
  return [...reviews]
    .sort((a, b) => (a.session.date < b.session.date ? -1 : Number(a.session.date > b.session.date)))
    .map((review) => {
      const { state, entries } = gradeSession(review, catalogue);
      const scores = Map.groupBy(
        entries.flatMap(({ criteria }) =>
          criteria.flatMap(({ criterion, score }) => (score === null ? [] : [{ criterion, score }])),
        ),
        ({ criterion }) => criterion,
      );
      return {
        date: review.session.date,
        session: state.kind === 'none' ? null : state.score,
        criteria: [...scores].map(([criterion, all]) => ({
          criterion,
          score: all.reduce((sum, { score }) => sum + score, 0) / all.length,
        })),
      };
    });
}
