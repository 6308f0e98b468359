import { NumberField, Tick } from '../base/fields.tsx';
import { plain } from '../base/figures.ts';
import type { HandoverChoices } from '../state/preferences.ts';
import { sayHandover } from '../words/sayHandover.ts';

export type ChoicesProps = {
  readonly choices: HandoverChoices;
  readonly onChoose: (change: Partial<HandoverChoices>) => void;
};

type AtNotes = HandoverChoices['atNotes'];

const usual: Readonly<Record<AtNotes['do'], AtNotes>> = {
  freeze: { do: 'freeze', lastsS: 1.5 },
  slow: { do: 'slow', speed: 0.5 },
  playOn: { do: 'playOn' },
};

/** Which clips go along, and what they do where something is said. */
export function ClipChoices({ choices, onChoose }: ChoicesProps) {
  const { atNotes, clips } = choices;
  return (
    <fieldset>
      <legend>{sayHandover('clips')}</legend>
      <Tick checked={clips} onChange={(wanted) => onChoose({ clips: wanted })}>
        {sayHandover('annotated')}
      </Tick>
      {clips && (
        <>
          <div className="field-row">
            <label className="field-inline">
              <span>{sayHandover('atNotes')}</span>
              <select
                value={atNotes.do}
                onChange={(event) => {
                  const chosen = Object.values(usual).find((one) => one.do === event.target.value);
                  if (chosen !== undefined) onChoose({ atNotes: chosen });
                }}
              >
                <option value="freeze">{sayHandover('freeze')}</option>
                <option value="slow">{sayHandover('slow')}</option>
                <option value="playOn">{sayHandover('playOn')}</option>
              </select>
            </label>
            {atNotes.do === 'freeze' && (
              <NumberField
                label={sayHandover('freezeFor')}
                name={sayHandover('freezeForSeconds')}
                unit={sayHandover('seconds')}
                shown={plain(atNotes.lastsS)}
                accepts={(value) => value >= 0.1 && value <= 10}
                onSave={(lastsS) => onChoose({ atNotes: { do: 'freeze', lastsS } })}
              />
            )}
            {atNotes.do === 'slow' && (
              <NumberField
                label={sayHandover('slowTo')}
                name={sayHandover('slowToSpeed')}
                unit={sayHandover('timesSpeed')}
                shown={plain(atNotes.speed)}
                accepts={(value) => value >= 0.05 && value <= 1}
                onSave={(speed) => onChoose({ atNotes: { do: 'slow', speed } })}
              />
            )}
          </div>
          <label className="field-inline">
            <span>{sayHandover('sound')}</span>
            <select
              value={choices.sound}
              onChange={(event) => onChoose({ sound: event.target.value === 'dropped' ? 'dropped' : 'kept' })}
            >
              <option value="kept">{sayHandover('soundKept')}</option>
              <option value="dropped">{sayHandover('soundDropped')}</option>
            </select>
          </label>
          <Tick checked={choices.loops} onChange={(loops) => onChoose({ loops })}>
            {sayHandover('loops')}
          </Tick>
        </>
      )}
      <Tick checked={choices.narrated} onChange={(narrated) => onChoose({ narrated })}>
        {sayHandover('narrated')}
      </Tick>
      <Tick checked={choices.originals ?? clips} onChange={(originals) => onChoose({ originals })}>
        {sayHandover('originals')}
      </Tick>
    </fieldset>
  );
}
