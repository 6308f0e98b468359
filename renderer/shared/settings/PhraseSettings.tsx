import { Plus, Trash2 } from 'lucide-react';
import { useState } from 'react';
import { type Phrase, phraseKeys, type Settings } from '../../../electron/contract/settings.ts';
import { phrasePlace } from '../../../engine/letter/phrases.ts';
import { Field } from '../../base/fields.tsx';
import { saySettings } from '../../words/saySettings.ts';
import { changeSetting, SettingsPart } from './SettingsPart.tsx';

type PhraseSettingsProps = {
  readonly settings: Pick<Settings, 'phrases'>;
  readonly titled?: 'visibly' | 'unseen';
};

/** The coach's own phrases; each change is kept when its field is left. */
export function PhraseSettings({ settings: { phrases }, titled = 'visibly' }: PhraseSettingsProps) {
  const keep = (changed: readonly Phrase[]): void => changeSetting({ phrases: [...changed] });
  const change = (next: Phrase): void =>
    keep(
      phrases.map((one) => {
        if (one.id === next.id) return next;
        // A key that another phrase takes is this one's no more.
        return next.key !== null && one.key === next.key ? { ...one, key: null } : one;
      }),
    );
  const free = phraseKeys.find((key) => phrases.every((one) => one.key !== key)) ?? null;
  return (
    <SettingsPart title={saySettings('phrases')} titled={titled}>
      <p className="soft">
        {saySettings('phrasesWords', { nameMark: phrasePlace('name'), exerciseMark: phrasePlace('exercise') })}
      </p>
      {phrases.map((phrase) => (
        <PhraseRow
          key={phrase.id}
          phrase={phrase}
          onChange={change}
          onRemove={() => keep(phrases.filter(({ id }) => id !== phrase.id))}
        />
      ))}
      <button
        type="button"
        onClick={() =>
          keep([...phrases, { id: crypto.randomUUID(), name: saySettings('phraseNew'), text: '', key: free }])
        }
      >
        <Plus aria-hidden="true" /> {saySettings('phraseAdd')}
      </button>
    </SettingsPart>
  );
}

type PhraseRowProps = {
  readonly phrase: Phrase;
  readonly onChange: (phrase: Phrase) => void;
  readonly onRemove: () => void;
};

function PhraseRow({ phrase, onChange, onRemove }: PhraseRowProps) {
  const [name, setName] = useState(phrase.name);
  const [text, setText] = useState(phrase.text);
  const keep = (): void => {
    const next = { ...phrase, name: name.trim() === '' ? phrase.name : name.trim(), text };
    if (next.name !== phrase.name || next.text !== phrase.text) onChange(next);
  };
  return (
    <fieldset className="phrase-row" aria-label={phrase.name}>
      <Field label={saySettings('phraseName')}>
        <input
          type="text"
          maxLength={60}
          value={name}
          onChange={(event) => setName(event.target.value)}
          onBlur={keep}
        />
      </Field>
      <Field label={saySettings('phraseKey')}>
        <select
          value={phrase.key ?? ''}
          onChange={(event) =>
            onChange({ ...phrase, name, text, key: phraseKeys.find((key) => key === event.target.value) ?? null })
          }
        >
          <option value="">{saySettings('phraseNoKey')}</option>
          {phraseKeys.map((key) => (
            <option key={key} value={key}>
              {key}
            </option>
          ))}
        </select>
      </Field>
      <Field label={saySettings('phraseText')}>
        <textarea
          rows={2}
          maxLength={2000}
          value={text}
          onChange={(event) => setText(event.target.value)}
          onBlur={keep}
        />
      </Field>
      <button
        type="button"
        className="icon-button"
        aria-label={saySettings('phraseRemove', { name: phrase.name })}
        onClick={onRemove}
      >
        <Trash2 aria-hidden="true" />
      </button>
    </fieldset>
  );
}
