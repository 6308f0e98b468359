import { create } from 'zustand';
import { keepInProfile, readProfile } from '../base/profile.ts';

export const themes = ['system', 'light', 'dark'] as const;
export type Theme = (typeof themes)[number];

const storageKey = 'rackside.theme';

const isTheme = (value: string | null): value is Theme => themes.some((theme) => theme === value);

function readTheme(): Theme {
  const kept = readProfile(storageKey);
  return isTheme(kept) ? kept : 'system';
}

/** Tells the page which of its two schemes to use; without a choice the system's. */
function show(theme: Theme): void {
  if (theme === 'system') document.documentElement.removeAttribute('data-theme');
  else document.documentElement.setAttribute('data-theme', theme);
}

type ThemeState = { readonly theme: Theme; readonly choose: (theme: Theme) => void; readonly next: () => void };

/** Light, dark, or as the system has it; kept in the window's profile. */
export const themeState = create<ThemeState>()((set, get) => {
  const theme = readTheme();
  show(theme);
  return {
    theme,
    choose: (chosen) => {
      keepInProfile(storageKey, chosen);
      show(chosen);
      set({ theme: chosen });
    },
    next: () => {
      const following = themes[(themes.indexOf(get().theme) + 1) % themes.length];
      if (following !== undefined) get().choose(following);
    },
  };
});
