import { isDeepStrictEqual } from 'node:util';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { JudgingData } from '../catalogue/loadCatalogue.ts';
import { all, type Reading } from '../store/connection.ts';
import type { Library } from '../store/library.ts';
import { readReview } from '../store/readReview.ts';
import { findSession } from '../store/sessions.ts';
import { type KeptSummary, readKeptSummary } from '../store/summaries.ts';

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

/** Compares each kept summary with one computed anew; one sentence for all that differ. */
export function verifySummaries({ reading }: Library, judging: JudgingData): string[] {
  const ids = all<{ id: string }>(reading, 'SELECT id FROM session').map(({ id }) => id);
  const wrong = ids.filter((id) => {
    const fresh = freshSummary(reading, id, judging);
    const kept = readKeptSummary(reading, id);
    // One made from other judging data is only old.
    if (kept !== undefined && kept.judgingSha256 !== fresh.judgingSha256) return false;
    return !isDeepStrictEqual(kept, fresh);
  });
  if (wrong.length === 0) return [];
  const of = wrong.length === 1 ? 'of 1 session' : `of ${wrong.length} sessions`;
  return [`What the desk shows ${of} does not match the flags and clips.`];
}
