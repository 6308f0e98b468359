import type { Language } from '../../engine/language/language.ts';
import { type Say, sayerOf } from '../../engine/wording/wordings.ts';
import { deskLanguage } from './deskLanguage.ts';
import { deskVoice } from './deskVoice.ts';

/**
 * Says the texts of one topic in the desk's language and voice as they are at each call: call it while something is
 * drawn or told, never while a module loads. Every text is given `voice`, `coach` or `self`. Throws where a value is
 * missing.
 */
export const sayer =
  <Id extends string>(wording: Readonly<Record<Language, Readonly<Record<Id, string>>>>): Say<Id> =>
  (id, values) =>
    sayerOf(wording, deskLanguage.getState().language)(id, { voice: deskVoice.getState().voice, ...values });
