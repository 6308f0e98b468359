import { describe, expect, it } from 'vitest';
import { workSayer } from '../../../engine/document/sayWork.ts';
import type { Language } from '../../../engine/language/language.ts';
import type { LoadUnits } from '../../../engine/review/load.ts';
import { equalSets, type Plan } from '../../../engine/review/plan.ts';
import type { Clip, Entry } from '../../../engine/review/review.ts';
import { workOf } from '../../../engine/review/work.ts';
import { clip, entry, reps } from '../reviews.ts';

type Asked = {
  readonly plan?: Plan;
  readonly setsDone?: number;
  readonly clips?: readonly Partial<Clip>[];
  readonly implement?: string;
  readonly beginsWith?: 'eccentric' | 'concentric' | 'hold';
  readonly units?: LoadUnits;
  readonly language?: Language;
};

/** How the work of an entry is said; spaces that must not break are shown as plain ones. */
function said(asked: Asked): string {
  const {
    plan,
    setsDone,
    clips = [],
    implement = 'barbell',
    beginsWith = 'eccentric',
    units = 'kg',
    language = 'en',
  } = asked;
  const { plan: _, setsDone: __, ...rest } = entry();
  const own: Entry = {
    ...rest,
    ...(plan && { plan }),
    ...(setsDone !== undefined && { setsDone }),
    clips: clips.map((one, index) => clip({ id: `c${index}`, reps: [], ...one })),
  };
  return workSayer(language, units).work(workOf(own, { implement, beginsWith })).replace(/\s/g, ' ');
}

const heavyToLight: Plan = {
  sets: [
    { reps: 10, loadKg: 20 },
    { reps: 15, loadKg: 12 },
    { reps: 20, loadKg: 0 },
    { reps: 20, loadKg: 0 },
  ],
};
const four = equalSets({ sets: 4, reps: 8, loadKg: 60 });

describe('work with a plan', () => {
  it('names every set that differs, and how many of them were filmed', () => {
    expect(said({ plan: heavyToLight, clips: [{}] })).toBe(
      '4 sets planned, 1 filmed: 10 × 20 kg, 15 × 12 kg, 2 of 20 × body weight',
    );
    expect(said({ plan: heavyToLight, clips: [{}], language: 'de' })).toBe(
      '4 Sätze geplant, 1 gefilmt: 10 × 20 kg, 15 × 12 kg, 2 Sätze mit 20 × Körpergewicht',
    );
  });

  it('says equal sets in one, whatever is known of how many were done', () => {
    const filmed = [{}, {}, {}, {}];
    expect(said({ plan: four, clips: filmed })).toBe('4 sets × 8 reps × 60 kg');
    expect(said({ plan: four, setsDone: 4, clips: [{}] })).toBe('4 sets × 8 reps × 60 kg');
    expect(said({ plan: four, clips: [{}] })).toBe('4 sets × 8 reps × 60 kg planned, 1 filmed');
    expect(said({ plan: four, setsDone: 3, clips: [{}] })).toBe('4 sets × 8 reps × 60 kg planned, 3 done');
    expect(said({ plan: four })).toBe('4 sets × 8 reps × 60 kg planned');
    expect(said({ plan: equalSets({ sets: 1, reps: 1 }), clips: [{}] })).toBe('1 set × 1 rep');
  });

  it('says a hold by its time, and how often where a set has several', () => {
    const hold = { implement: 'body weight', beginsWith: 'hold' as const, clips: [{}, {}, {}] };
    const plank = (reps: number, tempo?: string) => equalSets({ sets: 3, reps, ...(tempo && { tempo }) });
    expect(said({ ...hold, plan: plank(1, '0-30-0-0') })).toBe('3 sets × 30 s × body weight');
    expect(said({ ...hold, plan: plank(2, '0-10-0-0') })).toBe('3 sets × 2 holds × 10 s × body weight');
    expect(said({ ...hold, plan: plank(1) })).toBe('3 sets × body weight');
    expect(said({ ...hold, plan: plank(1, '0-0-0-20'), language: 'de' })).toBe('3 Sätze × 20 s × Körpergewicht');
    const sets = [30, 30, 20].map((seconds) => ({ reps: 1, tempo: `0-${seconds}-0-0`, loadKg: 10 }));
    expect(said({ ...hold, implement: 'dumbbells', plan: { sets } })).toBe('3 sets: 2 of 30 s × 10 kg, 20 s × 10 kg');
  });

  it('tells of loads on film that the plan does not name', () => {
    const clips = [{ loadKg: 60 }, { loadKg: 62.5 }, { loadKg: 65 }, { loadKg: 65 }];
    expect(said({ plan: four, clips })).toBe('4 sets × 8 reps × 60 kg; on film: 62.5 kg and 65 kg');
  });

  it('says repetitions alone where no load is stated', () => {
    const sets = [{ reps: 5 }, { reps: 5 }, { reps: 12 }];
    expect(said({ plan: { sets }, clips: [{}, {}, {}] })).toBe('3 sets: 2 of 5 reps, 12 reps');
  });
});

describe('work without a plan', () => {
  it('is what the clips show', () => {
    expect(
      said({
        clips: [
          { reps: reps(5), loadKg: 80 },
          { reps: reps(5), loadKg: 80 },
        ],
      }),
    ).toBe('2 sets × 5 reps × 80 kg');
    expect(said({ clips: [{ reps: reps(5), loadKg: 80 }, { loadKg: 70 }, {}] })).toBe(
      '3 sets: 5 × 80 kg, 70 kg, 1 not marked',
    );
  });

  it('never gives all sets done the numbers of the one on film', () => {
    expect(said({ setsDone: 3, clips: [{ reps: reps(5), loadKg: 80 }] })).toBe('3 sets done, 1 filmed: 5 × 80 kg');
  });

  it('says so where nothing is known', () => {
    expect(said({ setsDone: 3 })).toBe('3 sets');
    expect(said({})).toBe('not stated');
    expect(said({ language: 'de' })).toBe('nicht angegeben');
  });
});

describe('loads', () => {
  it('are body weight, with more or less, where the lifter is the load', () => {
    const plan = (loadKg?: number) => equalSets({ sets: 3, reps: 6, ...(loadKg !== undefined && { loadKg }) });
    expect(said({ plan: plan(), setsDone: 3, implement: 'body weight' })).toBe('3 sets × 6 reps × body weight');
    expect(said({ plan: plan(), setsDone: 3, implement: 'box' })).toBe('3 sets × 6 reps × body weight');
    expect(said({ plan: plan(0), setsDone: 3, implement: 'dumbbell' })).toBe('3 sets × 6 reps × body weight');
    expect(said({ plan: plan(10), setsDone: 3, implement: 'body weight' })).toBe(
      '3 sets × 6 reps × body weight + 10 kg',
    );
    expect(said({ plan: plan(25), setsDone: 3, implement: 'assisted pull-up machine' })).toBe(
      '3 sets × 6 reps × 25 kg of help',
    );
  });

  it('are in the units of the trainee', () => {
    // 135 lb is 61.235 kg, 45 lb is 20.412 kg.
    const plan = {
      sets: [
        { reps: 5, loadKg: 61.2 },
        { reps: 12, loadKg: 20.4 },
      ],
    };
    expect(said({ plan, setsDone: 2, units: 'lb' })).toBe('2 sets: 5 × 135 lb, 12 × 45 lb');
    expect(said({ plan, setsDone: 2, units: 'lb', language: 'de' })).toBe('2 Sätze: 5 × 135 lb, 12 × 45 lb');
  });
});
