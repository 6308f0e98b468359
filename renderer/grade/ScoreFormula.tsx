import type { EntryGrade } from '../../engine/grading/grade.ts';
import type { Rubric } from '../../engine/rubric/rubric.ts';
import { plain, points } from '../base/figures.ts';

/** The exercise score as the sum it is: mean and lowest criterion by their shares, and the cap where it holds. */
export function ScoreFormula({ grade, rubric }: { readonly grade: EntryGrade; readonly rubric: Rubric }) {
  const { weightedMean, lowest } = grade;
  if (weightedMean === null || lowest === null) return null;
  const lowestName = rubric.criteria.find((known) => known.id === lowest.criterion)?.name ?? lowest.criterion;
  const free = (1 - rubric.lowestShare) * weightedMean + rubric.lowestShare * lowest.score;
  return (
    <p className="formula" data-testid="score-formula">
      <span className="figure">
        {plain(1 - rubric.lowestShare)} × {points(weightedMean)} + {plain(rubric.lowestShare)} × {points(lowest.score)}{' '}
        = {points(free)}
      </span>
      <span className="soft">mean of all, and the lowest: {lowestName}</span>
      {grade.cappedByStop && <strong>A stop flag holds it at {plain(rubric.stopCap.exercise)}.</strong>}
    </p>
  );
}
