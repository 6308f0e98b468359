import * as v from 'valibot';
import { create } from 'zustand';
import { handoverOptionsSchema, type Paper } from '../../electron/contract/handover.ts';
import { keepInProfile, readProfile } from '../base/profile.ts';

export const themes = ['system', 'light', 'dark'] as const;
export type Theme = (typeof themes)[number];

const themeKey = 'rackside.theme';

const isTheme = (value: string | null): value is Theme => themes.some((theme) => theme === value);

function readTheme(): Theme {
  const kept = readProfile(themeKey);
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
      keepInProfile(themeKey, chosen);
      show(chosen);
      set({ theme: chosen });
    },
    next: () => {
      const following = themes[(themes.indexOf(get().theme) + 1) % themes.length];
      if (following !== undefined) get().choose(following);
    },
  };
});

const paperKey = 'rackside.paper';

type PaperState = { readonly paper: Paper; readonly choose: (paper: Paper) => void };

/** The paper that PDFs are set for; kept in the window's profile. */
export const paperState = create<PaperState>()((set) => ({
  paper: readProfile(paperKey) === 'letter' ? 'letter' : 'a4',
  choose: (paper) => {
    keepInProfile(paperKey, paper);
    set({ paper });
  },
}));

const handoverKey = 'rackside.handover';

/** What a coach mostly wants the same again. Paper is kept for all documents; names and the day to film are asked each time. */
const choicesSchema = v.omit(handoverOptionsSchema, ['paper', 'names', 'nextFilming']);
export type HandoverChoices = v.InferOutput<typeof choicesSchema>;

function readChoices(): HandoverChoices {
  try {
    const kept = v.safeParse(choicesSchema, JSON.parse(readProfile(handoverKey) ?? '{}'));
    if (kept.success) return kept.output;
  } catch {
    // What can't be read was not written by this window: the usual choices then.
  }
  return v.parse(choicesSchema, {});
}

type ChoicesState = {
  readonly choices: HandoverChoices;
  readonly choose: (change: Partial<HandoverChoices>) => void;
};

/** How the last handover was made; kept in the window's profile. */
export const handoverChoices = create<ChoicesState>()((set, get) => ({
  choices: readChoices(),
  choose: (change) => {
    const choices = { ...get().choices, ...change };
    keepInProfile(handoverKey, JSON.stringify(choices));
    set({ choices });
  },
}));
