import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { cautionsDue } from '../../../engine/letter/planCautions.ts';
import { compareSessions } from '../../../engine/progress/compareSessions.ts';
import { trendOf } from '../../../engine/progress/trend.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { readReview } from '../store/readReview.ts';
import { listSessionsOf } from '../store/sessions.ts';
import { findTrainee } from '../store/trainees.ts';
import type { Handler } from './handler.ts';

/** A trainee's sessions over time, all read by the newest version of the rubric, so that they can be laid side by side. */
export const getTraineeHistory: Handler<'trainees.history'> = (context, { traineeId }) => {
  const { reading } = context.library();
  findTrainee(reading, traineeId);
  const catalogue = context.catalogue(context.rubricVersions().at(-1));
  const sessions = listSessionsOf(reading, traineeId);
  const reviews = sessions.map((session) => {
    const from = context.catalogue(session.rubric_version);
    return { session, from, own: readReview(reading, session.id) };
  });
  const under = reviews.map(({ own, from }) => reviewUnder(own, { from, to: catalogue }));
  const points = reviews.map(({ session, own, from }, place) => {
    const { state } = gradeSession(own, from);
    const review = under[place] ?? own;
    return {
      sessionId: session.id,
      date: session.date,
      title: session.title,
      grade: state.kind === 'none' ? null : { mark: state.mark, score: state.score },
      criteria: (trendOf([review], catalogue)[0]?.criteria ?? []).map((one) => ({ ...one })),
      changes: compareSessions(review, under.slice(0, place), catalogue),
    };
  });
  const latest = under.at(-1);
  return {
    points,
    // Those that go with every letter say nothing of this trainee.
    cautions: latest === undefined ? [] : cautionsDue(latest, catalogue).filter(({ applies }) => applies !== 'always'),
    rubricVersion: catalogue.rubric.version,
  };
};
