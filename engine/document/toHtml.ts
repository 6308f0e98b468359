import type { Block, Inline, RacksideDocument } from './document.ts';
import { escapeHtml } from './escapeHtml.ts';
import { htmlStyle } from './htmlStyle.ts';
import { plainText } from './inlines.ts';

/** Media microseconds as HTML's duration string: "PT7.133S" (HTML Standard, valid duration string). */
const duration = (us: number): string =>
  `PT${Math.trunc(us / 1e6)}.${String(Math.trunc((us % 1e6) / 1e3)).padStart(3, '0')}S`;

function inlineHtml(inline: Inline): string {
  const words = escapeHtml(inline.text);
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

const lineHtml = (inlines: readonly Inline[]): string => inlines.map(inlineHtml).join('');

/** Words of more characters may be cut, so that one of them can't make a table wider than its page. */
const longestWord = 24;
/** Tables of more columns keep their width on narrow screens and are scrolled. */
const mostNarrowColumns = 4;

const isLong = (cell: readonly Inline[]): boolean =>
  plainText(cell)
    .split(/\s/)
    .some((word) => word.length > longestWord);

function tableHtml(table: Extract<Block, { kind: 'table' }>): string {
  const side = (index: number, cell: readonly Inline[] = []) => {
    const classes = [...(table.columns[index]?.align === 'end' ? ['end'] : []), ...(isLong(cell) ? ['long'] : [])];
    return classes.length === 0 ? '' : ` class="${classes.join(' ')}"`;
  };
  const heads = table.columns
    .map((column, index) => `<th scope="col"${side(index)}>${escapeHtml(column.label)}</th>`)
    .join('');
  const rows = table.rows.map((cells) => {
    const written = cells.map((cell, index) =>
      index === 0
        ? `<th scope="row"${side(index, cell)}>${lineHtml(cell)}</th>`
        : `<td${side(index, cell)}>${lineHtml(cell)}</td>`,
    );
    return `<tr>${written.join('')}</tr>`;
  });
  const id = escapeHtml(table.id);
  const width = table.columns.length > mostNarrowColumns ? 'table wide' : 'table';
  // Focusable, so that the keyboard can scroll it where it is wider than the screen.
  return [
    `<div class="${width}" role="group" aria-labelledby="${id}-caption" tabindex="0">`,
    `<table id="${id}">`,
    `<caption id="${id}-caption">${escapeHtml(table.caption)}</caption>`,
    `<thead><tr>${heads}</tr></thead>`,
    '<tbody>',
    ...rows,
    '</tbody>',
    '</table>',
    '</div>',
  ].join('\n');
}

function blockHtml(block: Block): string {
  const id = escapeHtml(block.id);
  switch (block.kind) {
    case 'heading':
      return `<h${block.level} id="${id}">${escapeHtml(block.text)}</h${block.level}>`;
    case 'paragraph':
      return `<p id="${id}">${lineHtml(block.inlines)}</p>`;
    case 'list': {
      const tag = block.ordered ? 'ol' : 'ul';
      const items = block.items.map((item) => `<li>${lineHtml(item)}</li>`);
      return [`<${tag} id="${id}">`, ...items, `</${tag}>`].join('\n');
    }
    case 'table':
      return tableHtml(block);
    case 'picture':
      return [
        `<figure id="${id}">`,
        `<img src="${escapeHtml(block.source)}" alt="${escapeHtml(block.alt)}">`,
        `<figcaption>${escapeHtml(block.caption)}</figcaption>`,
        '</figure>',
      ].join('\n');
    case 'notice': {
      const paragraphs = block.paragraphs.map((paragraph) => `<p>${lineHtml(paragraph)}</p>`);
      return [
        `<section class="notice" id="${id}" aria-labelledby="${id}-title">`,
        `<h2 id="${id}-title">${escapeHtml(block.title)}</h2>`,
        ...paragraphs,
        '</section>',
      ].join('\n');
    }
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
    '<body>',
    '<main>',
    `<h1>${escapeHtml(doc.title)}</h1>`,
    ...doc.blocks.map(blockHtml),
    '</main>',
    '</body>',
    '</html>',
    '',
  ].join('\n');
}
