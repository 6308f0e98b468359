import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { JudgingData } from '../catalogue/loadCatalogue.ts';
import type { Reading } from '../store/connection.ts';
import { readReview } from '../store/readReview.ts';
import { findSession } from '../store/sessions.ts';
import type { KeptSummary } from '../store/summaries.ts';

/** A session's summary computed from its rows alone. Throws `not-found`. */
export function freshSummary(reading: Reading, sessionId: string, judging: JudgingData): KeptSummary {
  const { rubric_version: version } = findSession(reading, sessionId);
  const review = readReview(reading, sessionId);
  const grade = gradeSession(review, judging.catalogue(version));
  const { state } = grade;
  const coverages = grade.entries.map((entry) => entry.coverage);
  const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);
  return {
    exercises: review.entries.map((entry) => entry.exercise),
    clips: sum(review.entries.map((entry) => entry.clips.length)),
    flags: sum(review.entries.map((entry) => entry.flags.length)),
    mark: state.kind === 'none' ? '' : state.mark,
    score: state.kind === 'none' ? null : state.score,
    provisional: state.kind === 'provisional',
    byHand: [grade, ...grade.entries].some(({ override }) => override !== null),
    coverage: coverages.length === 0 ? 0 : sum(coverages) / coverages.length,
    judgingSha256: judging.fingerprint(version),
  };
}
