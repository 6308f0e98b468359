/** Where in the review something is wrong, as `entries[0].flags[2]`, and what to do about it. */
export type Trouble = { readonly path: string; readonly what: string };

const longest = 28;

/**
 * A piece of somebody's input, fit to stand in a sentence: in quotes, without control, direction or other
 * unprintable characters, at most 28 characters of it.
 */
export function quote(text: string): string {
  const printable = text
    .slice(0, 200)
    .toWellFormed()
    .replace(/[\p{C}\p{Zl}\p{Zp}]/gu, '');
  const characters = Array.from(printable);
  const cut = characters.length > longest || text.length > 200;
  return `"${characters.slice(0, longest).join('')}${cut ? '…' : ''}"`;
}

/** A value for a sentence: texts quoted, numbers as they are, the rest by its kind. */
export function describe(value: unknown): string {
  if (typeof value === 'string') return `the text ${quote(value)}`;
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return String(value);
  if (value === null) return 'null';
  if (value === undefined) return 'missing';
  return Array.isArray(value) ? 'a list' : 'an object';
}
