import * as v from 'valibot';
import { languageSchema } from '../../engine/language/language.ts';

export const languageWindowRequests = {
  /** Keeps the language of the desk for this and the next start; the menu follows at once. */
  'language.keep': { params: v.strictObject({ language: languageSchema }), result: v.strictObject({}) },
} as const;
