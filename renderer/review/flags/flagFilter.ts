import type { Flag } from '../../../engine/review/review.ts';

/** What the list of all flags is kept to; '' = any. */
export type FlagFilter = { readonly criterion: string; readonly weight: string };

export const noFilter: FlagFilter = { criterion: '', weight: '' };

/** Whether a flag is shown under a filter. */
export const passes = ({ criterion, weight }: Pick<Flag, 'criterion' | 'weight'>, filter: FlagFilter): boolean =>
  (filter.criterion === '' || filter.criterion === criterion) && (filter.weight === '' || filter.weight === weight);
