import type { Picture } from './document.ts';
import { escapeHtml } from './escapeHtml.ts';
import { folderAddress } from './folderAddress.ts';
import { directionHtml, wordsHtml } from './inlineHtml.ts';

const address = (source: string): string =>
  source.startsWith('data:image/') ? escapeHtml(source) : folderAddress(source);

/** A picture with its caption as HTML. */
export function pictureHtml({ id, source, size, alt, caption }: Picture): string {
  const sides = size === undefined ? '' : ` width="${size.widthPx}" height="${size.heightPx}"`;
  return [
    `<figure id="${escapeHtml(id)}">`,
    `<img src="${address(source)}" alt="${escapeHtml(alt)}"${sides}>`,
    `<figcaption${directionHtml(caption)}>${wordsHtml(caption)}</figcaption>`,
    '</figure>',
  ].join('\n');
}
