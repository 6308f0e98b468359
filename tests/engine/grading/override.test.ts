import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import type { Entry, Override } from '../../../engine/review/review.ts';
import { catalogueOf, exercise } from '../catalogue.ts';
import { allSix, entry, flag, review, ticks } from '../reviews.ts';

const clean = (change: Partial<Entry> = {}): Entry => entry({ ticks: ticks(...allSix), ...change });
const catalogue = catalogueOf(exercise());
const kind = { score: 88, reason: 'First session after a long break.' } satisfies Override;

describe('a grade set by hand', () => {
  it('counts in place of the computed one, with its reason, and the computed one stays to be seen', () => {
    const [one] = gradeSession(review(clean({ override: kind })), catalogue).entries;
    expect(one?.state).toEqual({ kind: 'graded', score: 88, mark: 'B+', gradePoints: 3.3 });
    expect(one?.override?.reason).toBe(kind.reason);
    expect(one?.override?.computed).toMatchObject({ kind: 'graded', score: 100, mark: 'A+' });
  });

  it('enters the session weighted by sets done: (88 × 1 + 100 × 3) / 4 = 97', () => {
    const other = clean({ id: 'e2', setsDone: 3 });
    const grade = gradeSession(review(clean({ override: kind }), other), catalogue);
    expect(grade.technique).toBe(97);
    expect(grade.override).toBeNull();
  });

  it('counts as whole where nothing was looked at', () => {
    const grade = gradeSession(review(entry({ override: kind })), catalogue);
    expect(grade.state).toMatchObject({ kind: 'graded', score: 88 });
    expect(grade.entries[0]?.override?.computed.kind).toBe('none');
    expect(grade.range).toEqual({ low: 88, high: 88 });
  });

  it('stays under the caps of a stop flag: 69 for the exercise, 79 for the session', () => {
    const unsafe = clean({ override: kind, flags: [flag({ criterion: 'spinePosition', severity: 'stop' })] });
    const judged = review(unsafe);
    judged.session.override = { score: 95, reason: 'A good day all the same.' };
    const grade = gradeSession(judged, catalogue);
    expect(grade.entries[0]?.state).toMatchObject({ score: 69 });
    expect(grade.state).toMatchObject({ score: 79 });
  });

  it('is raised by nothing: a remark that is gone leaves it where the coach set it', () => {
    const short = flag({ criterion: 'depth', severity: 'correct', reps: [2] });
    const grade = gradeSession(review(clean({ flags: [short], override: kind })), catalogue);
    expect(grade.entries[0]?.raises).toMatchObject([{ flagIds: ['f1'], gain: 0 }]);
    expect(grade.raises).toMatchObject([{ flagIds: ['f1'], gain: 0 }]);
  });

  it('of 97 gains what the cap of a stop takes from it, 97 − 69 = 28, and never more than 100 has room for', () => {
    const unsafe = flag({ criterion: 'spinePosition', severity: 'stop', reps: [1] });
    const short = flag({ id: 'f2', criterion: 'depth', severity: 'correct' });
    const grade = gradeSession(
      review(clean({ flags: [unsafe, short], override: { score: 97, reason: 'Seen live.' } })),
      catalogue,
    );
    expect(grade.entries[0]?.state).toMatchObject({ score: 69 });
    expect(grade.entries[0]?.raises).toMatchObject([
      { flagIds: ['f1'], gain: 28 },
      { flagIds: ['f2'], gain: 0 },
    ]);
  });

  it('of the session is raised by nothing in its exercises', () => {
    const judged = review(clean({ flags: [flag({ criterion: 'depth', severity: 'correct' })] }));
    judged.session.override = kind;
    const grade = gradeSession(judged, catalogue);
    // 0.75 × (100 − 0.25 × 60) + 0.25 × 40 = 73.75, so the exercise itself gains 26.25.
    expect(grade.entries[0]?.raises).toMatchObject([{ gain: 26.25 }]);
    expect(grade.raises).toMatchObject([{ gain: 0 }]);
  });

  it('of a session counts in place of the computed one of the session alone', () => {
    const judged = review(clean());
    judged.session.override = kind;
    const grade = gradeSession(judged, catalogue);
    expect(grade.state).toMatchObject({ mark: 'B+' });
    expect(grade.override?.computed).toMatchObject({ mark: 'A+' });
    expect(grade.entries[0]?.override).toBeNull();
  });
});
