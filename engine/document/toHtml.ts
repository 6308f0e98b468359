import type { Block, Picture, RacksideDocument } from './document.ts';
import { type BlockGroup, groupBlocks, leadsOn } from './groupBlocks.ts';
import { htmlStyle } from './htmlStyle.ts';
import { tableHtml } from './htmlTable.ts';
import { directionHtml, escapeHtml, folderAddress, lineDirectionHtml, lineHtml, wordsHtml } from './lineHtml.ts';

function blockHtml(block: Exclude<Block, Picture>): string {
  const id = escapeHtml(block.id);
  switch (block.kind) {
    case 'heading':
      return `<h${block.level} id="${id}"${directionHtml(block.text)}>${wordsHtml(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p id="${id}"${lineDirectionHtml(block.inlines)}${leadsOn(block) ? ' class="leads"' : ''}>${lineHtml(block.inlines)}</p>`;
    case 'list': {
      const tag = block.ordered ? 'ol' : 'ul';
      const items = block.items.map((item) => `<li${lineDirectionHtml(item)}>${lineHtml(item)}</li>`);
      return [`<${tag} id="${id}">`, ...items, `</${tag}>`].join('\n');
    }
    case 'table':
      return tableHtml(block);
    case 'notice': {
      const paragraphs = block.paragraphs.map(
        (paragraph) => `<p${lineDirectionHtml(paragraph)}>${lineHtml(paragraph)}</p>`,
      );
      return [
        `<section class="notice" id="${id}" aria-labelledby="${id}-title">`,
        `<h2 id="${id}-title"${directionHtml(block.title)}>${wordsHtml(block.title)}</h2>`,
        ...paragraphs,
        '</section>',
      ].join('\n');
    }
  }
}

function groupHtml(group: BlockGroup): string {
  switch (group.kind) {
    case 'single':
      return blockHtml(group.block);
    case 'row':
      return ['<div class="pictures">', ...group.pictures.map(pictureHtml), '</div>'].join('\n');
    case 'beside':
      return [
        '<div class="beside">',
        pictureHtml(group.picture),
        '<div class="words">',
        ...group.blocks.map(blockHtml),
        '</div>',
        '</div>',
      ].join('\n');
  }
}

/** How a page is to look. */
export type HtmlLook = {
  /** Style rules of the faces it is set in, with their files inside; without them the reader's own faces are taken. */
  readonly faces?: string;
  /** The reader's device decides where nothing is said. On paper it is always light. */
  readonly scheme?: 'light' | 'dark';
};

/** Blocks as HTML, pictures with what is set beside them. */
export const blocksHtml = (blocks: readonly Block[]): string => groupBlocks(blocks).map(groupHtml).join('\n');

/** One self-contained page: no scripts, nothing fetched, the first column of each table heads its row. Prints well. */
export function toHtml(doc: RacksideDocument, { faces = '', scheme }: HtmlLook = {}): string {
  const author = doc.author === '' ? [] : [`<meta name="author" content="${escapeHtml(doc.author)}">`];
  return [
    '<!doctype html>',
    `<html lang="${escapeHtml(doc.language)}"${scheme === undefined ? '' : ` data-scheme="${scheme}"`}>`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; font-src data:; img-src 'self' data:">`,
    ...author,
    `<title>${escapeHtml(doc.title)}</title>`,
    `<style>\n${faces}${htmlStyle}</style>`,
    '</head>',
    '<body dir="ltr">',
    doc.fits === undefined ? '<main>' : '<main class="dense">',
    `<h1${directionHtml(doc.title)}>${wordsHtml(doc.title)}</h1>`,
    blocksHtml(doc.blocks),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

const address = (source: string): string =>
  source.startsWith('data:image/') ? escapeHtml(source) : folderAddress(source);

/** A picture with its caption as HTML. */
function pictureHtml({ id, source, size, alt, caption }: Picture): string {
  const sides = size === undefined ? '' : ` width="${size.widthPx}" height="${size.heightPx}"`;
  return [
    `<figure id="${escapeHtml(id)}">`,
    `<img src="${address(source)}" alt="${escapeHtml(alt)}"${sides}>`,
    `<figcaption${directionHtml(caption)}>${wordsHtml(caption)}</figcaption>`,
    '</figure>',
  ].join('\n');
}
