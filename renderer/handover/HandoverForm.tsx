import { PackageCheck } from 'lucide-react';
import { type RefObject, useRef, useState } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { localDay, usualDaysToFilming } from '../../electron/contract/localDay.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import { Tick } from '../base/fields.tsx';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { PaperField } from '../shared/PaperField.tsx';
import { handoverState } from '../state/handoverState.ts';
import { handoverChoices, paperState } from '../state/preferences.ts';
import { sayHandover } from '../words/sayHandover.ts';
import { sayNames } from '../words/sayNames.ts';
import { sayProblem } from '../words/sayProblem.ts';
import { ClipChoices } from './ClipChoices.tsx';
import { NameChecks } from './NameChecks.tsx';
import { PrivacyChoices } from './PrivacyChoices.tsx';
import { useNameDoubts } from './useNameDoubts.ts';

type HandoverFormProps = {
  readonly chosen: readonly SessionSummary[];
  /** For who submits it from outside. */
  readonly form?: RefObject<HTMLFormElement | null>;
};

/** How the chosen sessions are handed over; the window then asks where to. */
export function HandoverForm({ chosen, form }: HandoverFormProps) {
  const { choices, choose } = handoverChoices();
  const [nextFilming, setNextFilming] = useState(() => localDay(new Date(), usualDaysToFilming));
  const [names, setNames] = useState<NameMode | null>(null);
  const [asking, setAsking] = useState<'idle' | 'asking'>('idle');
  const { held, readAgain } = useNameDoubts(chosen, names, choices.narrated);
  const placesHeld = held.reduce((sum, { doubts }) => sum + doubts.length, 0);
  const heldHeading = useRef<HTMLHeadingElement>(null);
  const deliver = async (): Promise<void> => {
    if (placesHeld > 0) {
      heldHeading.current?.focus();
      return;
    }
    setAsking('asking');
    const reply = await rackside().askWindow('handover.deliver', {
      sessionIds: chosen.map(({ id }) => id),
      options: {
        ...choices,
        paper: paperState.getState().paper,
        ...(names !== null && { names }),
        ...(nextFilming !== '' && { nextFilming }),
      },
    });
    setAsking('idle');
    if (!reply.ok) {
      statusState.getState().tell(sayProblem(reply.problem));
      await readAgain();
    } else if (reply.value.jobIds !== null) handoverState.getState().addStarted(reply.value.jobIds);
  };
  return (
    <form
      ref={form}
      className="handover-form"
      aria-label={sayHandover('options')}
      onSubmit={(event) => {
        event.preventDefault();
        void deliver();
      }}
    >
      <NameChecks held={held} chosen={chosen} onDecided={() => void readAgain()} heading={heldHeading} />
      <ClipChoices choices={choices} onChoose={choose} />
      <PrivacyChoices choices={choices} onChoose={choose} chosen={chosen} names={names} onNames={setNames} />
      <fieldset>
        <legend>{sayHandover('documents')}</legend>
        <p className="soft">{sayHandover('documentsWords')}</p>
        <div className="field-row">
          <label className="field-inline">
            <span>{sayHandover('sheet')}</span>
            <select
              value={choices.sheet}
              onChange={(event) => choose({ sheet: event.target.value === 'short' ? 'short' : 'full' })}
            >
              <option value="full">{sayHandover('full')}</option>
              <option value="short">{sayHandover('short')}</option>
            </select>
          </label>
          <PaperField />
        </div>
        <label className="field-inline">
          <span>{sayHandover('filmAgain')}</span>
          <input type="date" value={nextFilming} onChange={(event) => setNextFilming(event.target.value)} />
        </label>
        <Tick checked={choices.zip} onChange={(zip) => choose({ zip })}>
          {sayHandover('zip')}
        </Tick>
      </fieldset>
      <footer className="handover-foot">
        <button type="submit" className="primary" disabled={chosen.length === 0 || asking === 'asking'}>
          <PackageCheck aria-hidden="true" />{' '}
          {chosen.length === 0
            ? sayHandover('chooseSession')
            : placesHeld > 0
              ? sayNames('checkFirst', { count: placesHeld })
              : sayHandover('handOver', { count: chosen.length })}
        </button>
      </footer>
    </form>
  );
}
