import { nameModeSchema } from '../../electron/contract/shapes.ts';
import { NameModeOptions } from '../base/NameModeOptions.tsx';
import { mutate } from '../bridge/mutate.ts';
import { deskState } from '../state/deskState.ts';

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
