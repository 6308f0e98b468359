import type { NameMode } from '../../engine/names/shownName.ts';

/** How a person can be named in what leaves the desk. */
export const nameModeWords: Readonly<Record<NameMode, string>> = {
  full: 'Full name',
  first: 'First name',
  initials: 'Initials',
  none: 'No name',
};

/** The options of a choice of how somebody is named. */
export function NameModeOptions() {
  return Object.entries(nameModeWords).map(([mode, words]) => (
    <option key={mode} value={mode}>
      {words}
    </option>
  ));
}
