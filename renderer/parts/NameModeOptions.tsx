import { nameModeWords } from './nameModeWords.ts';

/** The options of a choice of how somebody is named. */
export function NameModeOptions() {
  return Object.entries(nameModeWords).map(([mode, words]) => (
    <option key={mode} value={mode}>
      {words}
    </option>
  ));
}
