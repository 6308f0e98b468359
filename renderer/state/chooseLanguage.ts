import type { Language } from '../../engine/language/language.ts';
import { rackside } from '../bridge/rackside.ts';
import { deskLanguage } from '../words/deskLanguage.ts';

/** The desk in a language from now on; the window's host keeps it for the next start, and its menu follows. */
export function chooseLanguage(language: Language): void {
  deskLanguage.getState().choose(language);
  void rackside().askWindow('language.keep', { language });
}
