import type { SessionSummary } from '../../electron/contract/desk.ts';
import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { Tick } from '../base/fields.tsx';
import { NameModeOptions } from '../shared/NamesField.tsx';
import { deskState } from '../state/deskState.ts';
import type { ChoicesProps } from './ClipChoices.tsx';

type PrivacyChoicesProps = ChoicesProps & {
  readonly chosen: readonly SessionSummary[];
  /** How all of them are named; null = as each wants. */
  readonly names: NameMode | null;
  readonly onNames: (names: NameMode | null) => void;
};

/** Whose face and name go along. */
export function PrivacyChoices({ choices, onChoose, chosen, names, onNames }: PrivacyChoicesProps) {
  const trainees = deskState((state) => state.trainees);
  const { covering, originals } = choices;
  const minors = trainees.filter(({ id, minor }) => minor && chosen.some(({ traineeId }) => traineeId === id));
  return (
    <fieldset>
      <legend>Privacy</legend>
      <Tick
        checked={covering.head}
        disabled={originals && !covering.head}
        onChange={(head) => onChoose({ covering: { ...covering, head } })}
      >
        Cover the lifter’s head: a box follows the measured joints
      </Tick>
      {covering.head && (
        <label className="field-inline">
          <span>Covered by</span>
          <select
            value={covering.look}
            onChange={(event) =>
              onChoose({ covering: { ...covering, look: event.target.value === 'mosaic' ? 'mosaic' : 'filled' } })
            }
          >
            <option value="filled">a dark box</option>
            <option value="mosaic">a mosaic</option>
          </select>
        </label>
      )}
      {covering.head && originals && (
        <p role="note">An original can’t be covered: leave out the footage as it was filmed, or cover nothing.</p>
      )}
      {minors.length > 0 && !covering.head && (
        <p role="note">
          <strong>{minors.map(({ name }) => name).join(', ')}:</strong> a minor. Cover faces, or have the consent that
          your local rules ask for.
        </p>
      )}
      <label className="field-inline">
        <span>Named</span>
        <select
          value={names ?? ''}
          onChange={(event) => onNames(nameModeSchema.options.find((one) => one === event.target.value) ?? null)}
        >
          <option value="">As each trainee wants</option>
          <NameModeOptions />
        </select>
      </label>
      <p className="soft">Place, device and the time of filming are taken out of every file.</p>
    </fieldset>
  );
}
