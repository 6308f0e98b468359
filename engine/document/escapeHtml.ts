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
