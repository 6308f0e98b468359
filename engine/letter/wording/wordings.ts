import type { Language } from '../../language/language.ts';
import { english } from './english.ts';
import { german } from './german.ts';
import type { Wording } from './wording.ts';

/** The letter's wording in every language. */
export const wordings: Readonly<Record<Language, Wording>> = { en: english, de: german };
