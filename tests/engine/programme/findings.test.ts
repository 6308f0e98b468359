import { describe, expect, it } from 'vitest';
import { exercise } from '../catalogue.ts';
import { entry } from '../reviews.ts';
import { foundAmong, inEnglish, kindsOf, only, planned, sets, type Trainee } from './sessions.ts';

const squat = exercise({ name: 'Back squat' });
const legExtension = exercise({
  id: 'leg-extension',
  name: 'Leg extension',
  compound: false,
  hardestAt: 'shortened',
  ladder: { easier: [], harder: [], betterSuited: [{ exercise: 'squat', why: 'Loads the stretched end.' }] },
});
const curl = exercise({ id: 'curl', name: 'Curl', compound: false, muscles: { direct: ['biceps'], indirect: [] } });
const plank = exercise({
  id: 'plank',
  name: 'Plank',
  beginsWith: 'hold',
  muscles: { direct: ['abdominals'], indirect: [] },
});
const row = exercise({ id: 'row', name: 'Row', muscles: { direct: ['lats'], indirect: [] } });
const pushUp = exercise({
  id: 'push-up',
  name: 'Push-up',
  pattern: 'horizontal press',
  implement: 'body weight',
  muscles: { direct: ['chest'], indirect: [] },
});
const stepUp = exercise({ id: 'step-up', name: 'Step-up', implement: 'body weight' });
const lowering = exercise({ id: 'lowering', name: 'Lowering', implement: 'body weight', lowRepByDesign: true });
const found = foundAmong(squat, legExtension, curl, plank, row, pushUp, stepUp, lowering);
const kinds = (
  trainee: Trainee,
  ...session: Parameters<typeof found> extends [unknown, ...infer Rest] ? Rest : never
) => kindsOf(found(trainee, ...session));

describe('reps for the goal', () => {
  it.each([
    ['growth', 4, ['rep-range']],
    ['growth', 5, []],
    ['growth', 30, []],
    ['growth', 31, ['rep-range']],
    ['strength', 1, []],
    ['strength', 6, []],
    ['strength', 7, ['rep-range']],
    ['skill', 40, []],
  ] as const)('%s at %d reps', (goal, reps, expected) => {
    expect(kinds({ goal }, planned('squat', sets(4, reps)))).toEqual(expected);
  });

  it('leave isolation work alone in a strength plan, and holds in any', () => {
    expect(kinds({ goal: 'strength' }, planned('curl', sets(3, 12)))).toEqual([]);
    expect(kinds({}, planned('plank', sets(3, 1)))).toEqual([]);
  });

  it('leave other lifts of a strength session up to twelve reps beside a heavy one', () => {
    const main = planned('squat', sets(5, 5));
    expect(kinds({ goal: 'strength' }, main, planned('row', sets(3, 10)))).toEqual([]);
    expect(kinds({ goal: 'strength' }, main, planned('row', sets(3, 15)))).toEqual(['rep-range']);
    expect(kinds({ goal: 'strength' }, main, planned('push-up', sets(3, 20)))).toEqual([]);
  });

  it('leave lifts alone that are done for few reps by design', () => {
    expect(kinds({}, planned('lowering', sets(3, 3)))).toEqual([]);
  });

  it('are judged by most of the hard sets: heavy to light with rising reps is right', () => {
    const falling = [
      { reps: 10, loadKg: 20 },
      { reps: 15, loadKg: 12 },
      { reps: 20, loadKg: 0 },
    ];
    expect(kinds({}, planned('squat', falling))).toEqual([]);
    expect(kinds({}, planned('squat', [...sets(1, 3), ...sets(3, 8)]))).toEqual([]);
    expect(kinds({}, planned('squat', [...sets(3, 3), ...sets(1, 8)]))).toEqual(['rep-range']);
  });

  it('never ask for another load of a lift that has none', () => {
    const { suggestion } = inEnglish(only(found({}, planned('push-up', sets(3, 40))), 'rep-range'));
    expect(suggestion).toBe(
      'Lower the hands, raise the feet or slow the way down until a set ends between 5 and 30 reps.',
    );
    for (const own of [sets(3, 40), sets(3, 3)]) {
      for (const id of ['push-up', 'step-up']) {
        const said = inEnglish(only(found({}, planned(id, own)), 'rep-range')).suggestion;
        expect(said).not.toMatch(/load/);
      }
    }
    const loaded = only(found({}, planned('step-up', sets(3, 3, { loadKg: 20 }))), 'rep-range');
    expect(inEnglish(loaded).suggestion).toContain('load');
  });
});

describe('effort', () => {
  const easy = sets(3, 10, { repsInReserve: 6 });
  it('should be higher where many reps are kept in reserve for growth', () => {
    expect(kinds({}, planned('squat', easy))).toEqual(['effort']);
    expect(kinds({}, planned('squat', sets(3, 10, { repsInReserve: 2 })))).toEqual([]);
    expect(kinds({ goal: 'strength' }, planned('squat', sets(3, 5, { repsInReserve: 6 })))).toEqual([]);
  });
  it('is judged by the hardest set, so that warm-ups may be easy', () => {
    expect(kinds({}, planned('squat', [...easy, ...sets(2, 8, { repsInReserve: 1 })]))).toEqual([]);
  });
  it('may be low in a lift that warms up the same muscles for another', () => {
    expect(kinds({}, planned('step-up', easy), planned('squat', sets(3, 8)))).toEqual([]);
    expect(kinds({}, planned('squat', sets(3, 8)), planned('step-up', easy))).toEqual(['effort']);
  });
  it('asks for more reps, not more load, of a lift that has none', () => {
    const { suggestion } = inEnglish(only(found({}, planned('push-up', easy)), 'effort'));
    expect(suggestion).toBe(
      'Add reps, lower the hands or raise the feet until about 3 are left, as long as technique holds.',
    );
  });
});

it('has nothing to say without a plan', () => {
  expect(kinds({}, entry({ exercise: 'leg-extension' }))).toEqual([]);
});

it('gives every finding its own id, a reason, a suggestion and a source, the heaviest first', () => {
  const many = found(
    {},
    planned('leg-extension', sets(6, 40, { repsInReserve: 0 })),
    planned('squat', sets(6, 4, { tempo: '3-0-X-2' })),
    { ...planned('squat', sets(5, 4)), id: 'second' },
    planned('row', sets(3, 10, { repsInReserve: 8 })),
  );
  expect(new Set(many.map((finding) => finding.id)).size).toBe(many.length);
  expect(many.length).toBeGreaterThan(4);
  const rank = { keep: 0, prefer: 1, adjust: 2, correct: 3, stop: 4 };
  const ranks = many.map(({ severity }) => rank[severity]);
  expect(ranks).toEqual(ranks.toSorted((a, b) => b - a));
  for (const finding of many) {
    const { what, why, suggestion, source } = inEnglish(finding);
    expect([what, why, suggestion].every((text) => text.endsWith('.'))).toBe(true);
    expect(source).toMatch(/[^.]$/);
    expect(['prefer', 'adjust', 'correct']).toContain(finding.severity);
  }
});
