import { isDeepStrictEqual } from 'node:util';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { clipsLeft, sessionState } from '../../../engine/night/sessionState.ts';
import type { JudgingData } from '../catalogue/loadCatalogue.ts';
import { all, type Reading } from '../store/connection.ts';
import type { Library } from '../store/library.ts';
import { countMeasuredClips, readCameAt, readSent } from '../store/night.ts';
import { readReview } from '../store/readReview.ts';
import { isSessionSound } from '../store/rowDigests.ts';
import { findSession } from '../store/sessions.ts';
import { type KeptSummary, readKeptSummary } from '../store/summaries.ts';

/** A session's summary computed from its rows alone. Throws `not-found`. */
export function freshSummary(reading: Reading, sessionId: string, judging: JudgingData): KeptSummary {
  const { rubric_version: version } = findSession(reading, sessionId);
  const review = readReview(reading, sessionId);
  const grade = gradeSession(review, judging.catalogue(version));
  const { state } = grade;
  const coverages = grade.entries.map((entry) => entry.coverage);
  const coverage = coverages.length === 0 ? 0 : sum(coverages) / coverages.length;
  const clips = sum(review.entries.map((entry) => entry.clips.length));
  const flags = sum(review.entries.map((entry) => entry.flags.length));
  const ticks = sum(review.entries.map((entry) => entry.ticks.length));
  const byHand = [grade, ...grade.entries].some(({ override }) => override !== null);
  const stands = sessionState({
    touched: flags + ticks > 0 || byHand,
    grade: state.kind === 'graded' ? 'whole' : state.kind,
    sent: readSent(reading, sessionId),
  });
  return {
    exercises: review.entries.map((entry) => entry.exercise),
    clips,
    flags,
    mark: state.kind === 'none' ? '' : state.mark,
    score: state.kind === 'none' ? null : state.score,
    provisional: state.kind === 'provisional',
    byHand,
    coverage,
    state: stands,
    cameAt: clips === 0 ? '' : readCameAt(reading, sessionId),
    measured: countMeasuredClips(reading, sessionId),
    clipsLeft: clipsLeft({ state: stands, clips, coverage }),
    judgingSha256: judging.fingerprint(version),
  };
}

const sum = (numbers: readonly number[]): number => numbers.reduce((total, each) => total + each, 0);

/** Compares each kept summary with one computed anew; one sentence for all that differ. */
export function verifySummaries({ reading }: Library, judging: JudgingData): string[] {
  const ids = all<{ id: string }>(reading, 'SELECT id FROM session WHERE removed_at IS NULL').map(({ id }) => id);
  const wrong = ids.filter((id) => {
    // The damage itself is told of already.
    if (!isSessionSound(reading, id)) return false;
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
