import { describe, expect, it } from 'vitest';
import { translated } from '../../../engine/exercises/catalogue.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { letterDocument, tones } from '../../../engine/letter/letter.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import type { Plan } from '../../../engine/review/plan.ts';
import type { Review } from '../../../engine/review/review.ts';
import { catalogue, type Draft, draft, linesOf, planOf, sessionOf } from './sample.ts';

const strength = {
  name: 'Ruben Vale',
  goal: 'strength',
  experience: 'experienced',
  units: 'kg',
  minor: false,
} as const;
const rounds = (reps: number[] | 'set') => ({
  severity: 'correct' as const,
  criterion: 'spinePosition',
  fault: 'lowBackRounds',
  reps,
});
const quick = {
  severity: 'correct' as const,
  criterion: 'eccentricTempo',
  fault: 'quickLowering',
  reps: 'set' as const,
};

const sets = (reps: number, loadKg: number, repsInReserve: number): Plan => ({
  sets: Array.from({ length: 3 }, () => ({ reps, loadKg, repsInReserve })),
});
const lift = (exercise: string, flags: Draft['flags'], plan: Plan) => ({
  ...draft({ exercise, reps: 5, flags }),
  plan,
});
const first = (...entries: ReturnType<typeof lift>[]) => planOf(sessionOf(entries)).priorities[0];

// What a strength coach puts right first: the back of a heavy lift, by taking load off.
describe('a spine fault on most reps of a lift near its limit', () => {
  it('is the first thing asked, whatever gains more', () => {
    const press = lift(
      'bench-press',
      [
        { ...quick, severity: 'correct' },
        { severity: 'correct', criterion: 'depth', fault: 'shortOfDepth', reps: 'set' },
      ],
      sets(5, 80, 2),
    );
    const asked = first(press, lift('deadlift', [rounds([1, 2, 3])], sets(5, 160, 1)));
    expect(asked).toMatchObject({ urgent: true, fault: { id: 'lowBackRounds' } });
  });

  it.each([
    ['few reps in reserve', lift('romanian-deadlift', [rounds('set')], sets(10, 80, 2)), true],
    ['few reps a set', lift('romanian-deadlift', [rounds('set')], sets(5, 80, 4)), true],
    ['far from the limit', lift('romanian-deadlift', [rounds('set')], sets(12, 40, 5)), false],
    ['on few of the reps', lift('deadlift', [rounds([5])], sets(5, 160, 1)), false],
    ['a light remark', lift('deadlift', [{ ...rounds('set'), severity: 'adjust' as const }], sets(5, 160, 1)), false],
    [
      'a fault that is not of the back',
      lift(
        'deadlift',
        [
          {
            severity: 'correct' as const,
            criterion: 'spinePosition',
            fault: 'slackJerked',
            reps: 'set' as const,
          },
        ],
        sets(5, 160, 1),
      ),
      false,
    ],
    [
      'a lift of body weight',
      {
        ...lift(
          'pull-up',
          [{ severity: 'correct' as const, criterion: 'spinePosition', reps: 'set' as const }],
          sets(5, 0, 0),
        ),
      },
      false,
    ],
  ])('is urgent only where a coach would say so: %s', (_, entry, urgent) => {
    expect(planOf(sessionOf([entry])).priorities[0]?.urgent).toBe(urgent);
  });

  it('takes load off first in so many words, in every length, tone, voice and language, and lets nothing wait', () => {
    const heavy = sessionOf(
      [
        lift(
          'deadlift',
          [rounds('set'), quick, { severity: 'adjust', criterion: 'barPath', fault: 'barDriftsForward', reps: 'set' }],
          sets(5, 160, 1),
        ),
      ],
      { trainee: strength },
    );
    for (const voice of ['coach', 'self'] as const) {
      for (const tone of tones) {
        for (const length of ['full', 'short'] as const) {
          for (const [language, own] of [
            ['en', catalogue],
            ['de', translated(catalogue, 'de')],
          ] as const) {
            const review: Review = { ...heavy, voice };
            const plan = planLetter(review, gradeSession(review, own), own);
            const text = linesOf(letterDocument(writeLetter(plan, { length, tone, language }))).join('\n');
            expect(text).toMatch(
              language === 'en' ? /^Take load off first\./m : /^(?:Nimm zuerst Last weg|Ich nehme zuerst Last weg)\./m,
            );
            expect(text).not.toMatch(/can wait|kann warten|können warten|biggest gain|Am meisten kostet/);
          }
        }
      }
    }
  });

  it('asks to film the lighter set, not the hardest again', () => {
    const { film } = planOf(sessionOf([lift('deadlift', [rounds('set')], sets(5, 160, 1))]));
    expect(film[0]).toMatchObject({ kind: 'lighter', exerciseId: 'deadlift' });
    expect(film.map(({ kind }) => kind)).not.toContain('again');
  });
});

describe('a cue against the lift’s own target', () => {
  const asked = (plan: Plan, review: Partial<Review> = { trainee: strength }) =>
    planOf(sessionOf([lift('deadlift', [quick], plan)], review)).priorities[0];

  it('is not given: no counts, calm or slow, for a heavy deadlift', () => {
    const said = asked(sets(3, 180, 1));
    for (const words of [said?.cue, said?.drill]) expect(words).not.toMatch(/count|calm|slow|second/i);
    expect(said?.proof).not.toMatch(/lowering time/);
  });

  it('is given where the plan itself asks for a slow way down', () => {
    const slow: Plan = { sets: [{ reps: 3, loadKg: 120, tempo: '3-0-X-0' }] };
    expect(asked(slow)?.drill).not.toBe('');
  });

  it('is the coach’s to give', () => {
    const entry = lift('deadlift', [quick], sets(3, 180, 1));
    const own = { ...entry, flags: entry.flags.map((flag) => ({ ...flag, cue: 'Count to two' })) };
    expect(planOf(sessionOf([own], { trainee: strength })).priorities[0]?.cue).toBe('Count to two');
  });
});
