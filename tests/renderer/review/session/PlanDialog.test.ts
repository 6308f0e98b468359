import { expect, it } from 'vitest';
import { equalSets } from '../../../../engine/review/plan.ts';
import { fieldsOfPlan, planOfFields } from '../../../../renderer/review/session/PlanDialog.tsx';

const empty = { sets: '', reps: '', loadKg: '', tempo: '', repsInReserve: '' };

it('reads a plan, with decimal comma and small x as people type them', () => {
  expect(planOfFields({ sets: '4', reps: '6', loadKg: '82,5', tempo: '3-1-x-0', repsInReserve: '2' })).toEqual({
    plan: equalSets({ sets: 4, reps: 6, loadKg: 82.5, tempo: '3-1-X-0', repsInReserve: 2 }),
  });
});

it('leaves out what was not filled in; all empty is no plan', () => {
  expect(planOfFields({ ...empty, sets: '3', reps: '8' })).toEqual({ plan: equalSets({ sets: 3, reps: 8 }) });
  expect(planOfFields(empty)).toEqual({ plan: null });
});

it.each([
  ['Sets', { ...empty, sets: '0', reps: '8' }],
  ['Sets', { ...empty, reps: '8' }],
  ['Reps', { ...empty, sets: '3', reps: 'many' }],
  ['load', { ...empty, sets: '3', reps: '8', loadKg: '-5' }],
  ['tempo', { ...empty, sets: '3', reps: '8', tempo: 'slow' }],
])('says that %s is wrong, and that nothing was changed', (field, fields) => {
  const read = planOfFields(fields);
  expect('wrong' in read ? read.wrong : '').toMatch(new RegExp(`${field}.*nothing was changed`));
});

it('gives back what it was given', () => {
  const plan = equalSets({ sets: 3, reps: 8, tempo: '2-0-1-0' });
  expect(planOfFields(fieldsOfPlan(plan))).toEqual({ plan });
});
