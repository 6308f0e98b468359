import * as v from 'valibot';
import { create } from 'zustand';
import { type Language, languageSchema } from '../../engine/language/language.ts';

type DeskLanguage = { readonly language: Language; readonly choose: (language: Language) => void };

/** The language that the window's address asks for; English where it asks for none that there is. */
function askedFor(): Language {
  const asked = typeof location === 'undefined' ? null : new URLSearchParams(location.search).get('language');
  return v.is(languageSchema, asked) ? asked : 'en';
}

/** The language of the desk: the window's host keeps it, beside its menu, and opens the page in it. */
export const deskLanguage = create<DeskLanguage>()((set) => ({
  language: askedFor(),
  choose: (language) => set({ language }),
}));
