import { NumberField, Tick } from '../base/fields.tsx';
import { plain } from '../base/figures.ts';
import type { HandoverChoices } from '../state/preferences.ts';

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
      <legend>Clips</legend>
      <Tick checked={clips} onChange={(wanted) => onChoose({ clips: wanted })}>
        Each clip with notes, strokes, path and angles in its picture
      </Tick>
      {clips && (
        <>
          <div className="field-row">
            <label className="field-inline">
              <span>At each note it</span>
              <select
                value={atNotes.do}
                onChange={(event) => {
                  const chosen = Object.values(usual).find((one) => one.do === event.target.value);
                  if (chosen !== undefined) onChoose({ atNotes: chosen });
                }}
              >
                <option value="freeze">stands still</option>
                <option value="slow">goes slowly</option>
                <option value="playOn">plays on</option>
              </select>
            </label>
            {atNotes.do === 'freeze' && (
              <NumberField
                label="for"
                unit="s"
                shown={plain(atNotes.lastsS)}
                accepts={(value) => value >= 0.1 && value <= 10}
                onSave={(lastsS) => onChoose({ atNotes: { do: 'freeze', lastsS } })}
              />
            )}
            {atNotes.do === 'slow' && (
              <NumberField
                label="at"
                unit="× speed"
                shown={plain(atNotes.speed)}
                accepts={(value) => value >= 0.05 && value <= 1}
                onSave={(speed) => onChoose({ atNotes: { do: 'slow', speed } })}
              />
            )}
          </div>
          <label className="field-inline">
            <span>Its sound is</span>
            <select
              value={choices.sound}
              onChange={(event) => onChoose({ sound: event.target.value === 'dropped' ? 'dropped' : 'kept' })}
            >
              <option value="kept">kept</option>
              <option value="dropped">left out</option>
            </select>
          </label>
          <Tick checked={choices.loops} onChange={(loops) => onChoose({ loops })}>
            Each flagged rep as a short clip, to be played over and over
          </Tick>
        </>
      )}
      <Tick checked={choices.originals} onChange={(originals) => onChoose({ originals })}>
        The footage as it was filmed besides
      </Tick>
    </fieldset>
  );
}
