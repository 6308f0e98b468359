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
