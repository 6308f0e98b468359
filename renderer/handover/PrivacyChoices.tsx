import type { SessionSummary } from '../../electron/contract/desk.ts';
import { nameModeSchema } from '../../electron/contract/shapes.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { Tick } from '../base/fields.tsx';
import { NameModeOptions } from '../shared/NamesField.tsx';
import { deskState } from '../state/deskState.ts';
import { useIsSelfReview } from '../state/mine.ts';
import { sayHandover } from '../words/sayHandover.ts';
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
  const isSelf = useIsSelfReview();
  const { covering } = choices;
  const minors = trainees.filter(({ id, minor }) => minor && chosen.some(({ traineeId }) => traineeId === id));
  return (
    <fieldset>
      <legend>{sayHandover('privacy')}</legend>
      <Tick checked={covering.head} onChange={(head) => onChoose({ covering: { ...covering, head } })}>
        {sayHandover('coverHead')}
      </Tick>
      {covering.head && (
        <label className="field-inline">
          <span>{sayHandover('coverLook')}</span>
          <select
            value={covering.look}
            onChange={(event) =>
              onChoose({ covering: { ...covering, look: event.target.value === 'mosaic' ? 'mosaic' : 'filled' } })
            }
          >
            <option value="filled">{sayHandover('darkBox')}</option>
            <option value="mosaic">{sayHandover('mosaic')}</option>
          </select>
        </label>
      )}
      {minors.length > 0 && !covering.head && (
        <p role="note">
          {!isSelf && <strong>{minors.map(({ name }) => name).join(', ')}: </strong>}
          {sayHandover('minors')}
        </p>
      )}
      <label className="field-inline">
        <span>{sayHandover('nameShown')}</span>
        <select
          value={names ?? ''}
          onChange={(event) => onNames(nameModeSchema.options.find((one) => one === event.target.value) ?? null)}
        >
          <option value="">{sayHandover('asEachWants')}</option>
          <NameModeOptions />
        </select>
      </label>
      <p className="soft">{sayHandover('stripped')}</p>
    </fieldset>
  );
}
