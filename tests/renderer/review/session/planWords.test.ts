import { expect, it, onTestFinished } from 'vitest';
import { equalSets } from '../../../../engine/review/plan.ts';
import { planWords } from '../../../../renderer/review/session/planWords.ts';
import { deskLanguage } from '../../../../renderer/words/deskLanguage.ts';

const barbell = { implement: 'barbell' };

it('says equal sets in one', () => {
  const plan = equalSets({ sets: 3, reps: 8, loadKg: 80, tempo: '3-1-X-0', repsInReserve: 2 });
  expect(planWords(plan, 'kg', barbell)).toBe('3 × 8, 80 kg, tempo 3-1-X-0, 2 in reserve');
  // 80 kg = 176.37 lb.
  expect(planWords(plan, 'lb', barbell)).toBe('3 × 8, 176.5 lb, tempo 3-1-X-0, 2 in reserve');
  expect(planWords(equalSets({ sets: 4, reps: 6 }), 'kg', { implement: 'body weight' })).toBe('4 × 6, body weight');
  expect(planWords(equalSets({ sets: 4, reps: 6 }), 'kg', barbell)).toBe('4 × 6');
});

it('says a plan in German on a German desk', () => {
  deskLanguage.getState().choose('de');
  onTestFinished(() => deskLanguage.getState().choose('en'));
  const plan = equalSets({ sets: 3, reps: 8, loadKg: 82.5, tempo: '3-1-X-0', repsInReserve: 2 });
  expect(planWords(plan, 'kg', barbell)).toBe('3 × 8, 82,5 kg, Tempo 3-1-X-0, 2 in Reserve');
  expect(planWords({ sets: [{ reps: 5 }, { reps: 8 }] }, 'kg', barbell)).toBe('5 Wdh., 8 Wdh.');
});

it('says sets that differ one by one, and what they share once', () => {
  const sets = [
    { reps: 10, loadKg: 20, tempo: '3-1-X-0' },
    { reps: 15, loadKg: 12, tempo: '3-1-X-0', repsInReserve: 0 },
    { reps: 20, loadKg: 0, tempo: '3-1-X-0' },
    { reps: 20, loadKg: 0, tempo: '3-1-X-0' },
  ];
  expect(planWords({ sets }, 'kg', barbell)).toBe(
    '10 × 20 kg, 15 × 12 kg (0 in reserve), 2 of 20 × body weight; tempo 3-1-X-0',
  );
  expect(planWords({ sets: [{ reps: 5 }, { reps: 8 }] }, 'kg', barbell)).toBe('5 reps, 8 reps');
});
