import { useMemo } from 'react';
import type { EntryGrade } from '../../../engine/grading/grade.ts';
import type { Entry } from '../../../engine/review/review.ts';
import type { Criterion } from '../../../engine/rubric/rubric.ts';
import { fineRest, nextToJudge } from '../commands/leftToJudge.ts';
import { ReviewButton } from '../commands/ReviewDeskProvider.tsx';
import { scorecardModel } from '../model/scorecardModel.ts';
import { columnsToSee, unseenCells } from '../model/unseen.ts';

type LeftToSeeProps = { readonly entry: Entry; readonly grade: EntryGrade; readonly criteria: readonly Criterion[] };

/** How much of the card is left to judge, buttons to get there, and what no clip can show. */
export function LeftToSee({ entry, grade, criteria }: LeftToSeeProps) {
  const model = useMemo(() => scorecardModel(entry, grade, criteria), [entry, grade, criteria]);
  const left = unseenCells(model).length;
  const all = columnsToSee(model).length * model.rows.filter((row) => row.applicable).length;
  const hidden = model.rows.filter((row) => !row.applicable).map((row) => row.name.toLowerCase());
  return (
    <div className="left-to-see" data-testid="left-to-see">
      <span>
        {left === 0 ? 'All looked at.' : `${left} of ${all} cells left to look at.`}{' '}
        {hidden.length > 0 && (
          <span className="soft">No clip is filmed from a side that shows: {hidden.join(', ')}.</span>
        )}
      </span>
      {left > 0 && (
        <>
          <ReviewButton command={nextToJudge} />
          <ReviewButton command={fineRest} />
        </>
      )}
    </div>
  );
}
