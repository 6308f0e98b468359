import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { readReview } from '../store/readReview.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './sessionCatalogue.ts';

export const getGrade: Handler<'grade.get'> = (context, { sessionId }) => {
  const review = readReview(context.library().reading, sessionId);
  return gradeSession(review, sessionCatalogue(context, sessionId));
};
