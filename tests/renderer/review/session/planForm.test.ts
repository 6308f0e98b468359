import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equalSets, type Plan } from '../../../../engine/review/plan.ts';
import {
  asAlike,
  asRows,
  formOfPlan,
  type PlanForm,
  planOfForm,
} from '../../../../renderer/review/session/planForm.ts';

const empty = { reps: '', load: '', bodyWeight: false, tempo: '', repsInReserve: '' };
const alike = (sets: string, set: Partial<typeof empty>): PlanForm => ({
  kind: 'alike',
  sets,
  set: { ...empty, ...set },
});
const listed = (...rows: readonly Partial<typeof empty>[]): PlanForm => ({
  kind: 'listed',
  rows: rows.map((row) => ({ ...empty, ...row })),
});

describe('a form of equal sets', () => {
  it('is a plan with two figures', () => {
    expect(planOfForm(alike('3', { reps: '8' }), 'kg')).toEqual({ plan: equalSets({ sets: 3, reps: 8 }) });
  });

  it('reads a decimal comma and a small x as people type them', () => {
    expect(planOfForm(alike('4', { reps: '6', load: '82,5', tempo: '3-1-x-0', repsInReserve: '2' }), 'kg')).toEqual({
      plan: equalSets({ sets: 4, reps: 6, loadKg: 82.5, tempo: '3-1-X-0', repsInReserve: 2 }),
    });
  });

  it('is no plan when all of it is empty', () => {
    expect(planOfForm(alike('', {}), 'kg')).toEqual({ plan: null });
  });

  it.each([
    ['sets', alike('0', { reps: '8' }), 'Enter a whole number of sets from 1 to 50. Nothing was changed.'],
    ['sets', alike('', { reps: '8' }), 'Enter a whole number of sets from 1 to 50. Nothing was changed.'],
    ['reps', alike('3', { reps: 'many' }), 'Enter a whole number of reps from 1 to 500. Nothing was changed.'],
    ['load', alike('3', { reps: '8', load: '-5' }), 'Enter a load of up to 1,000 kilograms. Nothing was changed.'],
    [
      'tempo',
      alike('3', { reps: '8', tempo: 'slow' }),
      'Enter the tempo as four times in seconds, such as 3-1-X-0. Nothing was changed.',
    ],
  ])('says that %s is wrong', (field, form, sentence) => {
    expect(planOfForm(form, 'kg')).toEqual({ wrong: { row: null, field, sentence } });
  });
});

describe('a form of listed sets', () => {
  it('is a plan with each set as it is, body weight as a load of 0', () => {
    const form = listed({ reps: '10', load: '20' }, { reps: '15', load: '12,5' }, { reps: '20', bodyWeight: true });
    expect(planOfForm(form, 'kg')).toEqual({
      plan: {
        sets: [
          { reps: 10, loadKg: 20 },
          { reps: 15, loadKg: 12.5 },
          { reps: 20, loadKg: 0 },
        ],
      },
    });
  });

  it('names the row and the field that is wrong', () => {
    const form = listed({ reps: '10', load: '20' }, { reps: '15', load: 'heavy' }, { reps: '' });
    expect(planOfForm(form, 'lb')).toEqual({
      wrong: {
        row: 1,
        field: 'load',
        // 1000 kg ÷ 0.45359237 = 2204.6 lb.
        sentence: 'Set 2: Enter a load of up to 2,204 pounds. Nothing was changed.',
      },
    });
    expect(planOfForm(listed({ reps: '10' }, {}), 'kg')).toMatchObject({ wrong: { row: 1, field: 'reps' } });
  });
});

describe('loads in pounds', () => {
  it('are typed as pounds: 135 lb is 61.23496995 kg', () => {
    const read = planOfForm(alike('3', { reps: '5', load: '135' }), 'lb');
    const [first] = 'plan' in read ? (read.plan?.sets ?? []) : [];
    expect(first?.loadKg).toBeCloseTo(61.23496995, 10);
  });

  it('are shown as discs are loaded, and kept to the gram while nobody changes them', () => {
    const plan = equalSets({ sets: 3, reps: 5, loadKg: 61.2 });
    const form = formOfPlan(plan, 'lb');
    expect(form).toMatchObject({ set: { load: '135' } });
    expect(planOfForm(form, 'lb')).toEqual({ plan });
  });
});

describe('a form of a plan', () => {
  const set = fc.record(
    {
      reps: fc.integer({ min: 1, max: 40 }),
      loadKg: fc.integer({ min: 0, max: 800 }).map((quarters) => quarters / 4),
      tempo: fc.constantFrom('3-1-X-0', '2-0-1-0'),
      repsInReserve: fc.integer({ min: 0, max: 5 }),
    },
    { requiredKeys: ['reps'] },
  );
  const plans: fc.Arbitrary<Plan> = fc.record({ sets: fc.array(set, { minLength: 1, maxLength: 6 }) });

  it('gives the plan back, in either unit', () => {
    fc.assert(
      fc.property(plans, fc.constantFrom('kg' as const, 'lb' as const), (plan, units) => {
        expect(planOfForm(formOfPlan(plan, units), units)).toEqual({ plan });
        expect(planOfForm(asRows(formOfPlan(plan, units)), units)).toEqual({ plan });
      }),
    );
  });

  it('with all sets like the first has as many of them', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const [first] = plan.sets;
        expect(planOfForm(asAlike(asRows(formOfPlan(plan, 'kg'))), 'kg')).toEqual({
          plan: { sets: plan.sets.map(() => first) },
        });
      }),
    );
  });
});
