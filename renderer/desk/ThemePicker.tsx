import { Contrast } from 'lucide-react';
import { type Theme, themeState, themes } from '../state/preferences.ts';

const words: Readonly<Record<Theme, string>> = { system: 'As the system', light: 'Light', dark: 'Dark' };

/** Light, dark, or as the system has it. */
export function ThemePicker() {
  const { theme, choose } = themeState();
  return (
    <label className="theme-picker">
      <Contrast aria-hidden="true" />
      <span className="visually-hidden">Colours</span>
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
            {words[one]}
          </option>
        ))}
      </select>
    </label>
  );
}
