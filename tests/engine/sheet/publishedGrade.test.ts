import { describe, expect, it } from 'vitest';
import { judgingDataOf } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import { reviewOfText } from '../../../electron/backend/reviews/readReviewFile.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { rootFolder } from '../../electron/cli/runCommand.ts';
import { squatReview } from '../../electron/cli/squatReview.ts';

const judging = judgingDataOf(rootFolder);

/** What a program that reads `grade --json` gets of a review. */
const published = (review: object) => {
  const read = reviewOfText(JSON.stringify(review), 'review.json', judging);
  return JSON.parse(JSON.stringify(gradeJson(gradeSession(read, judging.catalogue(1)), 'en')));
};

const fieldsOf = (value: object): string[] => Object.keys(value).sort();

/** Too many reps and too near failure for strength, so that the programme has something to say. */
function planned(): Record<string, unknown> {
  const review = squatReview([{ criterion: 'depth', severity: 'correct', reps: [3], fault: 'shortOfDepth' }]);
  const [entry] = review.entries as object[];
  return {
    ...review,
    trainee: { name: 'Alva Brook', goal: 'strength' },
    entries: [{ ...entry, plan: { sets: 3, reps: 20, loadKg: 60, repsInReserve: 0 } }],
  };
}

/** A review by whose ticks only so many of its six criteria were looked at. */
function lookedAt(criteria: number): Record<string, unknown> {
  const review = squatReview([]);
  (review.entries as { ticks: unknown[] }[])[0]?.ticks.splice(criteria);
  return review;
}

// The shape that programs outside read: a field that goes or is renamed here breaks them.
describe('the published grade', () => {
  it('has these fields', () => {
    const grade = published(planned());
    expect(fieldsOf(grade)).toEqual([
      'cappedByStop',
      'entries',
      'findings',
      'override',
      'programme',
      'programmeCost',
      'raises',
      'range',
      'rubric',
      'state',
      'technique',
    ]);
    expect(grade.rubric).toEqual({ id: 'rackside', version: 1 });
    expect(fieldsOf(grade.range)).toEqual(['high', 'low']);
    const [entry] = grade.entries;
    expect(fieldsOf(entry)).toEqual([
      'cappedByStop',
      'coverage',
      'criteria',
      'entryId',
      'exercise',
      'lost',
      'lowest',
      'override',
      'raises',
      'range',
      'setsDone',
      'state',
      'weightedMean',
    ]);
    expect(fieldsOf(entry.lowest)).toEqual(['criterion', 'score']);
    const [criterion] = entry.criteria;
    expect(fieldsOf(criterion)).toEqual(['applicable', 'cells', 'criterion', 'lookedAt', 'reps', 'score', 'share']);
    expect(criterion.reps[2]).toMatchObject({ clip: 'a', rep: 3 });
    expect(fieldsOf(criterion.reps[2])).toEqual(['clip', 'flags', 'rep', 'score']);
    expect(fieldsOf(criterion.reps[2].flags[0])).toEqual(['cost', 'fault', 'flagId', 'severity']);
    for (const [raise] of [grade.raises, entry.raises]) {
      expect(fieldsOf(raise)).toEqual([
        'criterion',
        'entryId',
        'entryIds',
        'fault',
        'findingId',
        'flagIds',
        'gain',
        'kind',
        'reps',
        'severity',
      ]);
    }
  });

  it('tells a grade as its kind and a mark', () => {
    const { state, entries } = published(squatReview([]));
    const mark = { score: 100, letter: 'A+', gradePoints: 4 };
    expect(state).toEqual({ kind: 'graded', mark });
    expect(entries[0].state).toEqual({ kind: 'graded', mark });
    expect(published(lookedAt(2)).state).toEqual({ kind: 'provisional', mark });
  });

  it('tells a missing grade by its reason, a sentence', () => {
    const { state } = published(lookedAt(0));
    expect(fieldsOf(state)).toEqual(['kind', 'reason']);
    expect(state).toMatchObject({ kind: 'none', reason: expect.stringMatching(/^[A-Z].*\.$/) });
  });

  it('tells what the flags alone give where a grade was set by hand', () => {
    const byHand = { ...squatReview([]), session: { date: '2026-03-01', override: { score: 88, reason: 'New bar.' } } };
    expect(published(byHand)).toMatchObject({
      state: { kind: 'graded', mark: { score: 88, letter: 'B+', gradePoints: 3.3 } },
      override: { reason: 'New bar.', computed: { kind: 'graded', mark: { letter: 'A+' } } },
    });
  });

  it('says findings in English sentences', () => {
    const [finding] = published(planned()).findings;
    expect(fieldsOf(finding)).toEqual([
      ...['advice', 'entryIds', 'id', 'kind', 'restsOn', 'severity', 'source', 'suggestion', 'what', 'why'],
    ]);
    for (const words of [finding.what, finding.why, finding.suggestion]) expect(words).toMatch(/^[A-Z“"].* .*\.$/);
    expect(finding.source).toMatch(/\w/);
  });
});
