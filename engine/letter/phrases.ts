/** What a phrase's places are filled with, in the words of the letter. */
export type PhraseValues = { readonly name: string; readonly exercise: string };

/** How a place is written in a phrase. */
export const phrasePlace = (place: keyof PhraseValues): string => `{${place}}`;

/** A coach's own phrase with its places filled: `{name}` and `{exercise}`. Other braces stay as they are typed. */
export const fillPhrase = (phrase: string, values: PhraseValues): string =>
  phrase.replace(/\{(name|exercise)\}/g, (_, place: keyof PhraseValues) => values[place]);
