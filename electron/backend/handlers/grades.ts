import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { ActName } from '../store/acts.ts';
import { overrideColumns } from '../store/columns.ts';
import { findEntry } from '../store/entries.ts';
import { readReview } from '../store/readReview.ts';
import { findSession } from '../store/sessions.ts';
import { trainedBefore } from '../store/trainedBefore.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';
import { sessionCatalogue } from './judging.ts';

/** A grade set by hand says why; the arithmetic's grade stays to be seen beside it. */
export const overrideGrade: Handler<'grades.override'> = (context, { sessionId, entryId, override }) => {
  const { reading } = context.library();
  findSession(reading, sessionId);
  const entry = entryId === null ? null : findEntry(reading, entryId);
  if (entry !== null && entry.session_id !== sessionId) {
    throw new ProblemError('conflict', 'entryElsewhereGrade');
  }
  const name: ActName =
    entry === null
      ? { id: override === null ? 'sessionGradeUnset' : 'sessionGradeSet', values: {} }
      : { id: override === null ? 'gradeUnset' : 'gradeSet', values: { exercise: entry.exercise } };
  return actOnSession(context, sessionId, (changes) => {
    const columns = overrideColumns(override);
    if (entry === null) changes.update('session', { id: sessionId }, columns);
    else changes.update('entry', { id: entry.id }, columns);
    return { name, value: {} };
  });
};

export const getGrade: Handler<'grade.get'> = (context, { sessionId }) => {
  const { reading } = context.library();
  const before = trainedBefore(reading, findSession(reading, sessionId));
  return gradeSession(readReview(reading, sessionId), sessionCatalogue(context, sessionId), before);
};
