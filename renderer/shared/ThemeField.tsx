import { Contrast } from 'lucide-react';
import { themeState, themes } from '../state/preferences.ts';
import { sayPreferences } from '../words/sayPreferences.ts';

/** Light, dark, or as the system has it. */
export function ThemeField({ named = 'unseen' }: { readonly named?: 'visibly' | 'unseen' }) {
  const { theme, choose } = themeState();
  return (
    <label className="preference">
      <Contrast aria-hidden="true" />
      <span {...(named === 'unseen' && { className: 'visually-hidden' })}>{sayPreferences('colours')}</span>
      <select
        className="plain-select"
        value={theme}
        onChange={(event) => {
          const chosen = themes.find((one) => one === event.target.value);
          if (chosen !== undefined) choose(chosen);
        }}
      >
        {themes.map((one) => (
          <option key={one} value={one}>
            {sayPreferences(one)}
          </option>
        ))}
      </select>
    </label>
  );
}
