import { describe, expect, it } from 'vitest';
import type { Review } from '../../../engine/review/review.ts';
import { alike, judged, type Lift, session } from './session.ts';

type Draft = Parameters<typeof session>[1];

const kindsOf = (lifts: readonly Lift[], draft: Draft = {}) => judged(session(lifts, draft)).kinds;

describe('a coach has nothing to say of', () => {
  const fine: readonly (readonly [string, readonly Lift[], Draft])[] = [
    [
      '5 × 5 and 3 × 5 squats for strength',
      [
        { exercise: 'back-squat', sets: alike(5, 5, 120) },
        { exercise: 'front-squat', sets: alike(3, 5, 85) },
      ],
      { goal: 'strength' },
    ],
    [
      'a bench press 3 × 6 and an overhead press 3 × 8',
      [
        { exercise: 'bench-press', sets: alike(3, 6, 85) },
        { exercise: 'overhead-press', sets: alike(3, 8, 45) },
      ],
      {},
    ],
    [
      'the same for strength',
      [
        { exercise: 'bench-press', sets: alike(3, 6, 85) },
        { exercise: 'overhead-press', sets: alike(3, 8, 45) },
      ],
      { goal: 'strength' },
    ],
    [
      'a front squat 3 × 6 and a hinge 3 × 8',
      [
        { exercise: 'front-squat', sets: alike(3, 6, 80) },
        { exercise: 'romanian-deadlift', sets: alike(3, 8, 90) },
      ],
      {},
    ],
    [
      'two and two sets after halving',
      [
        { exercise: 'bench-press', sets: alike(2, 8, 80) },
        { exercise: 'incline-dumbbell-press', sets: alike(2, 10, 26) },
      ],
      {},
    ],
    [
      'a ramp, a top set and sets with less',
      [
        {
          exercise: 'deadlift',
          sets: [...alike(1, 5, 60, 8), ...alike(1, 3, 100, 6), ...alike(1, 1, 170, 2), ...alike(2, 5, 140)],
        },
      ],
      { goal: 'strength' },
    ],
    [
      'push-ups from heavy to light with rising reps',
      [{ exercise: 'push-up', sets: [...alike(1, 10, 20, 1), ...alike(1, 15, 12, 0), ...alike(1, 20, 0, 0)] }],
      {},
    ],
    [
      'four jump-and-lower sets of four',
      [{ exercise: 'jump-and-lower-pull-up', sets: alike(4, 4, 0) }],
      { experience: 'new' },
    ],
    [
      'two kneeling lowerings of four after a hinge',
      [
        { exercise: 'romanian-deadlift', sets: alike(3, 8, 80) },
        { exercise: 'kneeling-hamstring-lowering', sets: alike(2, 4, 0, 1) },
      ],
      {},
    ],
    [
      'a full pull-up with a load and a hinge',
      [
        { exercise: 'pull-up', sets: alike(3, 8, 10, 1) },
        { exercise: 'romanian-deadlift', sets: alike(3, 8, 100) },
      ],
      {},
    ],
    [
      'a sound session with dumbbells at home',
      [
        { exercise: 'dumbbell-romanian-deadlift', sets: alike(3, 12, 20) },
        { exercise: 'dumbbell-bench-press', sets: alike(3, 10, 20) },
        { exercise: 'one-arm-dumbbell-row', sets: alike(3, 10, 20) },
      ],
      { equipment: 'homeWithDumbbells' },
    ],
  ];
  it.each(fine)('%s', (_, lifts, draft) => {
    const { kinds, mark } = judged(session(lifts, draft));
    expect([kinds, mark]).toEqual([[], 'A+']);
  });
});

describe('a coach says of', () => {
  it('twenty hard chest sets over four lifts: halve them, each with its number, once; that is no A+', () => {
    const { kinds, programme, mark, letter } = judged(
      session([
        { exercise: 'bench-press', sets: alike(5, 8, 80, 1) },
        { exercise: 'incline-dumbbell-press', sets: alike(5, 10, 26, 1) },
        { exercise: 'dip', sets: alike(5, 10, 0, 1) },
        { exercise: 'cable-fly', sets: alike(5, 12, 12, 1) },
      ]),
    );
    expect(kinds).toEqual(['volume']);
    expect(programme).toMatch(/20 hard sets.*chest.*bench press from 5 to \d/);
    expect(mark).not.toBe('A+');
    expect(letter).toContain('20 hard sets');
    expect(letter).not.toMatch(/[Dd]o the same again/);
  });

  it('six sets for the thighs over two lifts of a new trainee, and not of an experienced one', () => {
    const lifts = [
      { exercise: 'leg-press', sets: alike(3, 12, 80) },
      { exercise: 'goblet-squat', sets: alike(3, 12, 16) },
    ];
    expect(kindsOf(lifts, { experience: 'new' })).toEqual(['volume']);
    expect(kindsOf(lifts)).toEqual([]);
  });

  it('twenty reps to failure before six heavy ones of the same muscles, for strength too', () => {
    const { programme } = judged(
      session(
        [
          { exercise: 'leg-extension', sets: alike(3, 20, 40, 0) },
          { exercise: 'front-squat', sets: alike(3, 6, 90, 1) },
        ],
        { goal: 'strength' },
      ),
    );
    expect(programme).toMatch(/Leg extension.*before the.*front squat/);
  });

  it('seconds held at the top of a pull-up: a slower way down and a stop in the hang, and no other lift', () => {
    const held = alike(3, 6, 0).map((set) => ({ ...set, tempo: '2-0-1-3' }));
    const { programme } = judged(session([{ exercise: 'pull-up', sets: held }]));
    expect(programme).toMatch(/slower lowering/);
    expect(programme).toMatch(/hang/);
    expect(programme).not.toMatch(/pulldown|or do it instead/);
  });

  it('a first pull-up: help by a machine before pulldown and rows, a partner, and a band last', () => {
    const { programme } = judged(session([{ exercise: 'pull-up', sets: alike(3, 1, 0, 0) }], { experience: 'new' }));
    const places = ['on a machine', 'pulldown', 'partner', 'band'].map((step) => programme.toLowerCase().indexOf(step));
    const named = places.filter((place) => place >= 0);
    expect(places.slice(0, 3).every((place) => place >= 0)).toBe(true);
    expect(named).toEqual([...named].sort((a, b) => a - b));
  });

  it('a floor press beside a bench, and a pike push-up: what ends their range', () => {
    const { programme } = judged(
      session(
        [
          { exercise: 'floor-press', sets: alike(3, 8, 60) },
          { exercise: 'pike-push-up', sets: alike(3, 8, 0) },
        ],
        { equipment: 'barAndBench' },
      ),
    );
    expect(programme).toMatch(/the floor ends the range.*bench press/);
    expect(programme).toMatch(/head .*floor.*(blocks|overhead press)/);
    expect(programme).not.toMatch(/cable|dumbbell|[Cc]hoose a load/);
  });

  it('a raise lying prone: fine to warm up, and another lift does the work', () => {
    const { programme, letter } = judged(session([{ exercise: 'prone-back-raise', sets: alike(3, 15, 0, 1) }]));
    expect(programme).toMatch(/warm-up/);
    expect(letter).not.toMatch(/[Dd]o the same again/);
  });

  it('hip thrusts and bridges: each named once', () => {
    const { programme } = judged(
      session([
        { exercise: 'hip-thrust', sets: alike(2, 10, 100, 1) },
        { exercise: 'glute-bridge', sets: alike(2, 15, 0, 1) },
        { exercise: 'hip-thrust', sets: alike(2, 12, 80, 1) },
      ]),
    );
    expect(programme).not.toMatch(/hip thrust (and|,) (the )?hip thrust|All 3/i);
  });
});

it('nobody at home is sent to a cable, a machine or a bar', () => {
  const { programme, letter } = judged(
    session(
      [
        { exercise: 'glute-bridge', sets: alike(3, 15, 0, 1) },
        { exercise: 'prone-back-raise', sets: alike(3, 15, 0) },
        { exercise: 'push-up', sets: alike(3, 15, 0, 1), seen: [{ fault: 'shortOfDepth', severity: 'correct' }] },
      ],
      { equipment: 'home', experience: 'new' },
    ),
  );
  for (const text of [programme, letter.split(' Cautions What')[0]]) {
    expect(text).not.toMatch(/\b(cable|machine|barbell|dumbbell|pulldown)\b|[Cc]hoose a load|[Tt]ake load off/);
  }
});

describe('what the week says', () => {
  const before: Review = session(
    [
      { exercise: 'bench-press', sets: alike(6, 8, 80, 1) },
      { exercise: 'incline-dumbbell-press', sets: alike(5, 10, 26, 1) },
      { exercise: 'dip', sets: alike(5, 10, 0, 1) },
      { exercise: 'cable-fly', sets: alike(4, 12, 12, 1) },
    ],
    { date: '2026-05-07' },
  );
  const today = session([{ exercise: 'bench-press', sets: alike(4, 8, 82.5, 1) }]);

  it.each(['full', 'short'] as const)('of too many sets stands in the %s letter', (length) => {
    const { kinds, letter } = judged(today, { earlier: [before], length });
    expect(kinds).toContain('weekly-volume');
    expect(letter).toMatch(/week/);
    expect(letter).not.toMatch(/[Dd]o the same again/);
  });

  it('of a day too little between stands there too', () => {
    const squats = (date: string) => session([{ exercise: 'back-squat', sets: alike(4, 8, 100, 0) }], { date });
    const { kinds, letter } = judged(squats('2026-05-11'), { earlier: [squats('2026-05-10')] });
    expect(kinds).toContain('spacing');
    expect(letter).toMatch(/Leave a day/);
  });
});
