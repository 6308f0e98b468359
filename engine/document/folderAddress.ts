import { escapeHtml } from './escapeHtml.ts';

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
