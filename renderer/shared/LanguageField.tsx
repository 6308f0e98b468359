import { Languages } from 'lucide-react';
import { type Language, languages } from '../../engine/language/language.ts';
import type { PreferencesMessageId } from '../../engine/wording/english/desk/preferences.ts';
import { chooseLanguage } from '../state/chooseLanguage.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayPreferences } from '../words/sayPreferences.ts';

const idOf = { en: 'english', de: 'german' } as const satisfies Record<Language, PreferencesMessageId>;

/** The language that the desk speaks; each is named by its own name. */
export function LanguageField() {
  const language = deskLanguage((state) => state.language);
  return (
    <label className="preference">
      <Languages aria-hidden="true" />
      <span className="visually-hidden">{sayPreferences('language')}</span>
      <select
        className="plain-select"
        value={language}
        onChange={(event) => {
          const chosen = languages.find((one) => one === event.target.value);
          if (chosen !== undefined) chooseLanguage(chosen);
        }}
      >
        {languages.map((one) => (
          <option key={one} value={one} lang={one}>
            {sayPreferences(idOf[one])}
          </option>
        ))}
      </select>
    </label>
  );
}
