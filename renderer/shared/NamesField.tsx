import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { mutate } from '../bridge/mutate.ts';
import { deskState } from '../state/deskState.ts';

/** How a person can be named in what leaves the desk. */
export const nameModeWords: Readonly<Record<NameMode, string>> = {
  full: 'Full name',
  first: 'First name',
  initials: 'Initials',
  none: 'No name',
};

/** The options of a choice of how somebody is named. */
export function NameModeOptions() {
  return Object.entries(nameModeWords).map(([mode, words]) => (
    <option key={mode} value={mode}>
      {words}
    </option>
  ));
}

type NamesFieldProps = { readonly traineeId: string; readonly traineeName: string };

/** How a trainee wants to be named in what leaves the desk. */
export function NamesField({ traineeId, traineeName }: NamesFieldProps) {
  const names = deskState((state) => state.trainees.find(({ id }) => id === traineeId)?.names);
  if (names === undefined) return null;
  return (
    <select
      aria-label={`How ${traineeName} is named in what leaves the desk`}
      value={names}
      onChange={(event) => {
        const chosen = nameModeSchema.options.find((mode) => mode === event.target.value);
        if (chosen !== undefined) void mutate('trainees.names', { traineeId, names: chosen });
      }}
    >
      <NameModeOptions />
    </select>
  );
}
