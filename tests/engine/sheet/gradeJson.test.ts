import { expect, it } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { equalSets } from '../../../engine/review/plan.ts';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { catalogue, draft, sessionOf } from '../letter/sample.ts';

const short = { severity: 'correct', criterion: 'depth', fault: 'shortOfDepth' } as const;

it('publishes a grade with its mark apart, as it was published from the first version on', () => {
  const review = sessionOf([draft({ flags: [{ ...short, reps: [1] }] })]);
  const grade = gradeSession(review, catalogue);
  const { state, entries } = gradeJson(grade, 'en');
  expect(Object.keys(state)).toEqual(['kind', 'mark']);
  expect(state.kind === 'none' ? [] : Object.keys(state.mark)).toEqual(['score', 'letter', 'gradePoints']);
  expect(entries[0]?.state).toMatchObject({ kind: 'graded', mark: { letter: expect.stringMatching(/^[A-F][+-]?$/) } });
});

it('publishes a grade set by hand with what the flags alone say, and a missing one with a sentence', () => {
  const unseen = { ...draft({ ticks: [] }), override: { score: 90, reason: 'Seen live.' } };
  const { entries } = gradeJson(gradeSession(sessionOf([unseen]), catalogue), 'en');
  expect(entries[0]).toMatchObject({
    state: { kind: 'graded', mark: { score: 90, letter: 'A-' } },
    override: { reason: 'Seen live.', computed: { kind: 'none', reason: 'Nothing has been looked at yet.' } },
  });
});

it('publishes findings in sentences of one language', () => {
  const planned = { ...draft(), plan: equalSets({ sets: 3, reps: 1 }) };
  const german = translated(catalogue, 'de');
  const [finding] = gradeJson(gradeSession(sessionOf([planned]), german), 'de').findings;
  expect(Object.keys(finding ?? {})).toEqual([
    ...['id', 'kind', 'severity', 'entryIds', 'restsOn', 'advice', 'what', 'why', 'suggestion', 'source'],
  ]);
  expect(finding?.what).toBe('Kniebeuge: 1 Wiederholung je Satz geplant, und das Ziel ist Muskelaufbau.');
});
