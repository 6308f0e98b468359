import type { Block, Inline, Picture, RacksideDocument } from './document.ts';

const oneLine = (words: string): string => words.toWellFormed().replace(/\s+/g, ' ');

/**
 * Marks that mean something anywhere in a line, and addresses that would turn into links by themselves (GFM 6.9). Readers
 * look for addresses of mail after they have taken escapes back, so a word joiner, which nobody sees, keeps those apart.
 */
const escapeWords = (words: string): string =>
  oneLine(words)
    .replace(/[\\`*_[\]<>|~&]/g, '\\$&')
    .replace(/:\/\//g, '\\://')
    .replace(/\bwww\./gi, (found) => `${found.slice(0, -1)}\\.`)
    .replace(/(?<=[\w.+-])@(?=[\w-])/g, '\u2060@');

/** Marks that mean something only at the start of a line: headings, lists, rules, underlines. */
const escapeStart = (line: string): string =>
  line.replace(/^(\s*)([#+=-])/, '$1\\$2').replace(/^(\s*\d{1,9})([.)])/, '$1\\$2');

function inlineMarkdown(inline: Inline): string {
  const words = escapeWords(inline.text);
  // A mark next to a space would not open or close (CommonMark 6.2), so the spaces stay outside.
  const [, before = '', core = '', after = ''] = /^(\s*)(.*?)(\s*)$/.exec(words) ?? [];
  if (core === '') return words;
  switch (inline.kind) {
    case 'text':
    case 'time':
      return words;
    case 'strong':
      return `${before}**${core}**${after}`;
    case 'emphasis':
      return `${before}*${core}*${after}`;
  }
}

const lineMarkdown = (inlines: readonly Inline[]): string => escapeStart(inlines.map(inlineMarkdown).join('').trim());

function tableMarkdown(table: Extract<Block, { kind: 'table' }>): string {
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`;
  return [
    lineMarkdown([{ kind: 'emphasis', text: table.caption }]),
    '',
    row(table.columns.map((column) => escapeWords(column.label))),
    row(table.columns.map((column) => (column.align === 'end' ? '---:' : ':---'))),
    ...table.rows.map((cells) => row(cells.map((cell) => cell.map(inlineMarkdown).join('').trim()))),
  ].join('\n');
}

/** A link to the file beside the text; a picture that has no file is its caption alone. */
function pictureMarkdown({ source, alt, caption }: Picture): string {
  const said = lineMarkdown([{ kind: 'emphasis', text: caption }]);
  if (source.startsWith('data:')) return said;
  return `![${escapeWords(alt)}](<${source.replace(/[<>\\\n\r]/g, encodeURIComponent)}>)\n\n${said}`;
}

function blockMarkdown(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `${'#'.repeat(block.level)} ${escapeWords(block.text)}`;
    case 'paragraph':
      return lineMarkdown(block.inlines);
    case 'list':
      return block.items
        .map((item, index) => `${block.ordered ? `${index + 1}.` : '-'} ${lineMarkdown(item)}`)
        .join('\n');
    case 'table':
      return tableMarkdown(block);
    case 'picture':
      return pictureMarkdown(block);
    case 'notice':
      return [`> **${escapeWords(block.title)}**`, ...block.paragraphs.map((line) => `> ${lineMarkdown(line)}`)].join(
        '\n>\n',
      );
  }
}

/** GitHub-flavoured Markdown; every word is escaped, so that nothing a person typed turns into markup. */
export const toMarkdown = (doc: RacksideDocument): string =>
  `${[`# ${escapeWords(doc.title)}`, ...doc.blocks.map(blockMarkdown)].join('\n\n')}\n`;
