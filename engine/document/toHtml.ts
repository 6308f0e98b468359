import { type Block, type Inline, type Picture, plainText, type RacksideDocument, type Table } from './document.ts';
import { type BlockGroup, groupBlocks, leadsOn } from './groupBlocks.ts';
import { htmlStyle } from './htmlStyle.ts';
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

/** One self-contained page: no scripts, nothing fetched, the first column of each table heads its row. Prints well. */
export function toHtml(doc: RacksideDocument): string {
  const author = doc.author === '' ? [] : [`<meta name="author" content="${escapeHtml(doc.author)}">`];
  return [
    '<!doctype html>',
    `<html lang="${escapeHtml(doc.language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    `<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:">`,
    ...author,
    `<title>${escapeHtml(doc.title)}</title>`,
    `<style>\n${htmlStyle}</style>`,
    '</head>',
    '<body dir="ltr">',
    doc.fits === undefined ? '<main>' : '<main class="dense">',
    `<h1${directionHtml(doc.title)}>${wordsHtml(doc.title)}</h1>`,
    ...groupBlocks(doc.blocks).map(groupHtml),
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

/** Words of more characters may be cut, so that one of them can't make a table wider than its page. */
const longestWord = 24;
/** Tables of more columns keep their width on narrow screens and are scrolled. */
const mostNarrowColumns = 4;

const isLong = (cell: readonly Inline[]): boolean =>
  plainText(cell)
    .split(/\s/)
    .some((word) => word.length > longestWord);

/** The bar is a picture of the number beside it, so it says nothing to those who hear the page. */
function barHtml(share: number | null): string {
  const filled = Math.round(1000 * Math.min(1, Math.max(0, share ?? 0))) / 10;
  const fill = share === null ? '' : `<rect class="fill" width="${filled}" height="8"></rect>`;
  const track = `<rect class="${share === null ? 'unknown' : 'track'}" width="100" height="8"></rect>`;
  return `<svg class="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">${track}${fill}</svg>`;
}

function cellHtml(table: Table, at: { readonly row: number; readonly column: number }): string {
  const cell = table.rows[at.row]?.[at.column] ?? [];
  const hasBar = table.bars?.column === at.column;
  const words = hasBar
    ? `${barHtml(table.bars?.shares[at.row] ?? null)}<span>${lineHtml(cell)}</span>`
    : lineHtml(cell);
  const classes = [
    ...(table.columns[at.column]?.align === 'end' ? ['end'] : []),
    ...(isLong(cell) ? ['long'] : []),
    ...(hasBar ? ['bars'] : []),
  ];
  const looks = `${classes.length === 0 ? '' : ` class="${classes.join(' ')}"`}${lineDirectionHtml(cell)}`;
  return at.column === 0 ? `<th scope="row"${looks}>${words}</th>` : `<td${looks}>${words}</td>`;
}

/** A table as HTML, the first column heading its rows; it takes the focus, so that the keyboard can scroll it. */
export function tableHtml(table: Table): string {
  const heads = table.columns.map(
    ({ label, align }) => `<th scope="col"${align === 'end' ? ' class="end"' : ''}>${wordsHtml(label)}</th>`,
  );
  const rows = table.rows.map(
    (cells, row) => `<tr>${cells.map((_, column) => cellHtml(table, { row, column })).join('')}</tr>`,
  );
  const id = escapeHtml(table.id);
  const width = table.columns.length > mostNarrowColumns ? 'table wide' : 'table';
  return [
    `<div class="${width}" role="group" aria-labelledby="${id}-caption" tabindex="0">`,
    `<table id="${id}">`,
    `<caption id="${id}-caption"${directionHtml(table.caption)}>${wordsHtml(table.caption)}</caption>`,
    `<thead><tr>${heads.join('')}</tr></thead>`,
    '<tbody>',
    ...rows,
    '</tbody>',
    '</table>',
    '</div>',
  ].join('\n');
}
