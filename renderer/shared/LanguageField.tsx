import { Languages } from 'lucide-react';
import { languageNames, languages } from '../../engine/language/language.ts';
import { chooseLanguage } from '../state/chooseLanguage.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayPreferences } from '../words/sayPreferences.ts';

/** The language that the desk speaks; each is named by its own name. */
export function LanguageField({ named = 'unseen' }: { readonly named?: 'visibly' | 'unseen' }) {
  const language = deskLanguage((state) => state.language);
  return (
    <label className="preference">
      <Languages aria-hidden="true" />
      <span {...(named === 'unseen' && { className: 'visually-hidden' })}>{sayPreferences('language')}</span>
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
            {languageNames[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
