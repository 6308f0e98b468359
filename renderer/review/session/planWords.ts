import type { Plan } from '../../../engine/review/review.ts';
import { loadWords } from '../../base/figures.ts';

/** A plan in one line: "3 × 8, 80 kg, tempo 3-1-X-0, 2 in reserve". */
export function planWords(plan: Plan, units: 'kg' | 'lb'): string {
  return [
    `${plan.sets} × ${plan.reps}`,
    plan.loadKg === undefined ? '' : loadWords(plan.loadKg, units),
    plan.tempo === undefined ? '' : `tempo ${plan.tempo}`,
    plan.repsInReserve === undefined ? '' : `${plan.repsInReserve} in reserve`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}
