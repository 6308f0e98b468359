import { describe, expect, it } from 'vitest';
import type { PlannedSet } from '../../../engine/review/plan.ts';
import { exercise } from '../catalogue.ts';
import { clip } from '../reviews.ts';
import { foundAmong, inEnglish, kindsOf, only, planned, sets } from './sessions.ts';

const legs = { direct: ['quadriceps', 'glutes'], indirect: [] };
const squat = exercise({ id: 'squat', name: 'Back squat', muscles: legs });
const press = exercise({ id: 'leg-press', name: 'Leg press', muscles: legs });
const extension = exercise({
  id: 'extension',
  name: 'Leg extension',
  compound: false,
  muscles: { direct: ['quadriceps'], indirect: [] },
});
const hinge = exercise({
  id: 'hinge',
  name: 'Romanian deadlift',
  muscles: { direct: ['hamstrings', 'glutes'], indirect: [] },
});
const bench = exercise({ id: 'bench', name: 'Bench press', muscles: { direct: ['chest', 'triceps'], indirect: [] } });
const pushdown = exercise({
  id: 'pushdown',
  name: 'Pushdown',
  compound: false,
  muscles: { direct: ['triceps'], indirect: [] },
});
const lowering = exercise({
  id: 'lowering',
  name: 'Kneeling lowering',
  compound: false,
  lowRepByDesign: true,
  muscles: { direct: ['hamstrings'], indirect: [] },
});
const bridge = exercise({
  ...{ id: 'bridge', name: 'Glute bridge', implement: 'body weight', hardestAt: 'shortened' },
  ...{ muscles: { direct: ['glutes'], indirect: [] } },
  ladder: { easier: [], harder: [], betterSuited: [{ exercise: 'hinge', why: '' }] },
});
const assisted = exercise({
  id: 'assisted',
  implement: 'assisted pull-up machine',
  muscles: { direct: ['lats'], indirect: [] },
});
const weighted = exercise({ id: 'weighted', name: 'Weighted raise', implement: 'body weight', muscles: legs });
const found = foundAmong(squat, press, extension, hinge, bench, pushdown, lowering, bridge, weighted, assisted);
const ordered = (...session: Parameters<typeof found>) =>
  kindsOf(found(...session)).filter((kind) => kind.includes('order'));

const plain = (id: string, count: number, reps: number) => planned(id, sets(count, reps));

describe('the order of lifts', () => {
  it.each(['growth', 'strength', 'skill'] as const)(
    'for %s, has twenty reps to failure after six heavy ones',
    (goal) => {
      const [light, heavy] = [plain('extension', 2, 20), plain('squat', 3, 6)];
      const finding = found({ goal }, light, heavy).find(({ kind }) => kind.includes('order'));
      expect(finding?.entryIds).toEqual(['extension', 'squat']);
      expect(finding?.advice).toEqual({ kind: 'order', entryIds: ['squat', 'extension'] });
      expect(ordered({ goal }, heavy, light)).toEqual([]);
    },
  );

  it('says so in plain words', () => {
    const finding = only(found({}, plain('leg-press', 2, 20), plain('squat', 3, 6)), 'load-order');
    const { what, suggestion } = inEnglish(finding);
    expect(what).toBe(
      'Leg press in hard sets of 20 reps comes before the heavier back squat in sets of 6, and they work the same muscles: quadriceps and glutes.',
    );
    expect(suggestion).toContain('Do the back squat first.');
  });

  it('lets light sets warm up, when they end far from failure', () => {
    const easy = planned('leg-press', sets(2, 20, { repsInReserve: 8 }));
    expect(ordered({}, easy, plain('squat', 3, 6))).toEqual([]);
  });

  it('takes a bridge on the floor for a warm-up, unless it says that it is hard', () => {
    expect(ordered({}, plain('bridge', 2, 20), plain('squat', 3, 6))).toEqual([]);
    const hard = planned('bridge', sets(2, 20, { repsInReserve: 0 }));
    expect(ordered({}, hard, plain('squat', 3, 6))).toEqual(['load-order']);
  });

  it('does not mind lifts that are about as heavy, or other muscles', () => {
    expect(ordered({}, plain('leg-press', 3, 12), plain('squat', 3, 8))).toEqual([]);
    expect(ordered({}, plain('leg-press', 3, 10), plain('squat', 3, 8))).toEqual([]);
    expect(ordered({}, plain('squat', 3, 10), plain('hinge', 3, 6))).toEqual([]);
    expect(ordered({}, plain('squat', 3, 20), plain('bench', 3, 6))).toEqual([]);
  });

  it('does not call sets of twelve heavy', () => {
    expect(ordered({}, plain('leg-press', 3, 20), plain('squat', 2, 12))).toEqual([]);
    expect(ordered({ goal: 'strength' }, plain('leg-press', 3, 20), plain('squat', 2, 12))).toEqual([]);
  });

  it('says it too of a small muscle that the big lift needs', () => {
    expect(ordered({}, plain('pushdown', 3, 20), plain('bench', 3, 6))).toEqual(['load-order']);
    expect(ordered({}, plain('pushdown', 3, 12), plain('bench', 3, 8))).toEqual([]);
  });

  it('for strength, has the compound lift before the isolation one at any number of reps', () => {
    const finding = only(found({ goal: 'strength' }, plain('extension', 3, 5), plain('squat', 3, 5)), 'order');
    expect(finding).toMatchObject({ severity: 'adjust', entryIds: ['extension', 'squat'] });
    expect(ordered({}, plain('extension', 3, 8), plain('squat', 3, 8))).toEqual([]);
  });

  it('does not take a lift for heavy that is done for few reps by design', () => {
    expect(ordered({}, plain('hinge', 2, 10), plain('lowering', 2, 4))).toEqual([]);
  });

  it('is one finding for lifts that hang together, with names once', () => {
    const again = { ...plain('extension', 2, 20), id: 'again' };
    const findings = found({}, plain('extension', 2, 20), again, plain('squat', 2, 6));
    const { what } = inEnglish(only(findings, 'load-order'));
    expect(what.match(/leg extension/gi)).toHaveLength(1);
  });
});

describe('the order of sets within a lift', () => {
  const stated = (repsInReserve: number | undefined, ...list: readonly (readonly [number, number])[]): PlannedSet[] =>
    list.map(([reps, loadKg]) => ({ reps, loadKg, ...(repsInReserve !== undefined && { repsInReserve }) }));
  const heavyToLight = [
    [10, 20],
    [15, 12],
    [20, 0],
  ] as const;

  it.each([
    ['weighted', undefined],
    ['squat', undefined],
    ['weighted', 1],
    ['squat', 1],
  ] as const)('is right from heavy to light with rising reps: %s, %s in reserve', (id, reserve) => {
    expect(found({}, planned(id, stated(reserve, ...heavyToLight)))).toEqual([]);
    expect(ordered({ goal: 'strength' }, planned(id, stated(reserve, ...heavyToLight)))).toEqual([]);
  });

  it('is wrong from light to heavy when every set is hard', () => {
    const finding = only(found({}, planned('squat', stated(1, [20, 60], [12, 80], [6, 100]))), 'set-order');
    expect(finding.advice).toEqual({ kind: 'heaviestFirst', entryIds: ['squat'] });
    expect(ordered({}, planned('weighted', stated(undefined, [20, 0], [15, 12], [10, 20])))).toEqual(['set-order']);
  });

  it('may have help that grows as the lifter tires', () => {
    expect(ordered({}, planned('assisted', stated(1, [12, 20], [8, 30], [6, 40])))).toEqual([]);
  });

  it('may climb as a warm-up with much in reserve, stated or plain from the loads', () => {
    const easy = stated(6, [10, 40], [8, 60]);
    expect(ordered({}, planned('squat', [...easy, ...stated(1, [6, 100])]))).toEqual([]);
    expect(ordered({}, planned('squat', stated(undefined, [10, 20], [8, 40], [5, 60], [5, 100])))).toEqual([]);
  });

  it('for strength, has filmed sets fall too where every set is planned hard', () => {
    const clips = (...loads: number[]) => loads.map((loadKg, at) => clip({ id: `c${at}`, loadKg }));
    const filmed = (repsInReserve: number | undefined, ...loads: number[]) =>
      planned('squat', sets(3, 5, repsInReserve === undefined ? {} : { repsInReserve }), { clips: clips(...loads) });
    expect(ordered({ goal: 'strength' }, filmed(1, 80, 100))).toEqual(['set-order']);
    expect(ordered({ goal: 'strength' }, filmed(1, 100, 80))).toEqual([]);
    expect(ordered({ goal: 'strength' }, filmed(undefined, 60, 80, 100))).toEqual([]);
  });
});
