/** A word with a capital, to begin a label with. */
export const capitalized = (word: string): string => `${word.charAt(0).toUpperCase()}${word.slice(1)}`;
