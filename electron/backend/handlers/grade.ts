import { gradeSession } from '../../../engine/grading/index.ts';
import { readReview } from '../store/index.ts';
import type { Handler } from './handler.ts';

export const getGrade: Handler<'grade.get'> = (context, { sessionId }) => {
  const catalogue = context.catalogue();
  return gradeSession(readReview(context.library().reading, sessionId, catalogue.rubric), catalogue);
};
