import { type Inline, plainText } from './document.ts';
import { directionOf } from './words.ts';

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/** Characters that HTML text must not hold: controls except tab and line ends. */
const unprintable = /(?![\t\n\r])\p{Cc}/gu;

/** Any words as HTML text or as a quoted attribute's value. */
export const escapeHtml = (words: string): string =>
  words
    .toWellFormed()
    .replace(unprintable, '')
    .replace(/[&<>"']/g, (character) => entities[character] ?? character);

/**
 * The name of a file beside the page, as an attribute: none of its characters means a scheme, a host, a query, a fragment
 * or a way out of the folder.
 */
export const folderAddress = (name: string): string =>
  escapeHtml(
    name
      .toWellFormed()
      .split('/')
      .filter((part) => !['', '.', '..'].includes(part))
      .map(encodeURIComponent)
      .join('/'),
  );

/** Media microseconds as HTML's duration string: "PT7.133S" (HTML Standard, valid duration string). */
const duration = (us: number): string =>
  `PT${Math.trunc(us / 1e6)}.${String(Math.trunc((us % 1e6) / 1e3)).padStart(3, '0')}S`;

/** Words as HTML; what is isolated for its direction of writing (FSI … PDI) becomes an element of its own. */
export const wordsHtml = (words: string): string =>
  escapeHtml(words)
    .replace(/\u2068([^\u2068\u2069]*)\u2069/g, '<bdi>$1</bdi>')
    .replace(/[\u2068\u2069]/g, '');

/** The attribute of an element whose words are read from right to left; else nothing: the page itself is read the other way. */
export const directionHtml = (words: string): string => (directionOf(words) === 'rtl' ? ' dir="rtl"' : '');

/** The same for a line of pieces. */
export const lineDirectionHtml = (inlines: readonly Inline[]): string => directionHtml(plainText(inlines));

function inlineHtml(inline: Inline): string {
  const words = wordsHtml(inline.text);
  switch (inline.kind) {
    case 'text':
      return words;
    case 'strong':
      return `<strong>${words}</strong>`;
    case 'emphasis':
      return `<em>${words}</em>`;
    case 'time':
      return `<time datetime="${duration(inline.us)}" data-clip="${escapeHtml(inline.clip)}">${words}</time>`;
  }
}

/** A line of pieces as HTML. */
export const lineHtml = (inlines: readonly Inline[]): string => inlines.map(inlineHtml).join('');
