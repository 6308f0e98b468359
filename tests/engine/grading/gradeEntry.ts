import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { EntryGrade } from '../../../engine/grading/grade.ts';
import { gradeJudged, judge, ungraded } from '../../../engine/grading/gradeEntry.ts';
import type { Entry } from '../../../engine/review/review.ts';

/** The grade of one exercise by itself, as a session's grade is made of it. */
export function gradeEntry(entry: Entry, catalogue: Catalogue): EntryGrade {
  const judged = judge(entry, catalogue);
  return judged === null ? ungraded(entry, catalogue) : gradeJudged(judged);
}
