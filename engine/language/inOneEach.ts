import type { Language, Translation } from './language.ts';

/**
 * Translations that are kept in several parts, as one for each language. Throws an Error naming a text that two parts
 * translate differently.
 */
export function inOneEach(parts: readonly Translation[]): Translation[] {
  const whole = new Map<Language, Record<string, string>>();
  for (const { language, texts } of parts) {
    const known = whole.get(language) ?? {};
    for (const [english, text] of Object.entries(texts)) {
      if (Object.hasOwn(known, english) && known[english] !== text) {
        throw new Error(`translation ${language}: "${english}" is translated in two ways`);
      }
    }
    whole.set(language, { ...known, ...texts });
  }
  return [...whole].map(([language, texts]) => ({ language, texts }));
}
