import type { Flag } from '../../../engine/review/review.ts';
import { type Criterion, weights } from '../../../engine/rubric/rubric.ts';
import { capitalized } from '../../base/capitalized.ts';

/** What the list of all flags is kept to; '' = any. */
export type FlagFilter = { readonly criterion: string; readonly weight: string };

export const noFilter: FlagFilter = { criterion: '', weight: '' };

/** Whether a flag is shown under a filter. */
export const passes = ({ criterion, weight }: Pick<Flag, 'criterion' | 'weight'>, filter: FlagFilter): boolean =>
  (filter.criterion === '' || filter.criterion === criterion) && (filter.weight === '' || filter.weight === weight);

type FlagFilterBarProps = {
  readonly filter: FlagFilter;
  readonly criteria: readonly Criterion[];
  readonly flags: readonly Flag[];
  readonly onChange: (filter: FlagFilter) => void;
};

/** Keeps the list of flags to one criterion or one weight; only what is there can be chosen. */
export function FlagFilterBar({ filter, criteria, flags, onChange }: FlagFilterBarProps) {
  const present = new Set(flags.flatMap((flag) => [flag.criterion, flag.weight]));
  return (
    <fieldset className="flag-filter" aria-label="Which flags are shown">
      <select
        aria-label="Criterion"
        value={filter.criterion}
        onChange={(event) => onChange({ ...filter, criterion: event.target.value })}
      >
        <option value="">Every criterion</option>
        {criteria
          .filter(({ id }) => present.has(id))
          .map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
      </select>
      <select
        aria-label="Weight"
        value={filter.weight}
        onChange={(event) => onChange({ ...filter, weight: event.target.value })}
      >
        <option value="">Every weight</option>
        {weights
          .filter((weight) => present.has(weight))
          .map((weight) => (
            <option key={weight} value={weight}>
              {capitalized(weight)}
            </option>
          ))}
      </select>
    </fieldset>
  );
}
