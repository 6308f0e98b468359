import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import type { TraineeMessageId } from '../../engine/wording/english/desk/trainee.ts';
import { mutate } from '../bridge/mutate.ts';
import { deskState } from '../state/deskState.ts';
import { sayTrainee } from '../words/sayTrainee.ts';

const idOf = { full: 'fullName', first: 'firstName', initials: 'initials', none: 'noName' } as const satisfies Record<
  NameMode,
  TraineeMessageId
>;

/** How a person can be named in what is sent: "First name". */
export const sayNameMode = (mode: NameMode): string => sayTrainee(idOf[mode]);

/** The options of a choice of how somebody is named. */
export function NameModeOptions() {
  return nameModeSchema.options.map((mode) => (
    <option key={mode} value={mode}>
      {sayNameMode(mode)}
    </option>
  ));
}

type NamesFieldProps = { readonly traineeId: string; readonly traineeName: string };

/** How a trainee wants to be named in what is sent. */
export function NamesField({ traineeId, traineeName }: NamesFieldProps) {
  const names = deskState((state) => state.trainees.find(({ id }) => id === traineeId)?.names);
  if (names === undefined) return null;
  return (
    <select
      aria-label={sayTrainee('nameShownOf', { name: traineeName })}
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
