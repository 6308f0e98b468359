import { type Block, plainText, type RacksideDocument } from './document.ts';

const width = 78;

const cleaned = (words: string): string => words.toWellFormed();

function underlined(words: string, mark: string): string {
  const lines = wrapLines(cleaned(words), width);
  return [...lines, mark.repeat(Math.max(...lines.map(lengthOf)))].join('\n');
}

/** Columns side by side where they fit; else one record after the other, each cell beside its label. */
function tableText(table: Extract<Block, { kind: 'table' }>): string {
  const rows = table.rows.map((cells) => cells.map((cell) => cleaned(plainText(cell)).replace(/\s+/g, ' ').trim()));
  const labels = table.columns.map((column) => column.label);
  const widths = labels.map((label, index) =>
    Math.max(lengthOf(label), ...rows.map((row) => lengthOf(row[index] ?? ''))),
  );
  const caption = wrapLines(table.caption, width);
  if (widths.reduce((sum, each) => sum + each + 2, -2) > width) {
    const records = rows.map((row) =>
      row
        .flatMap((cell, index) =>
          cell === '' ? [] : wrapLines(`${labels[index]}: ${cell}`, width, index === 0 ? '- ' : '  ', '    '),
        )
        .join('\n'),
    );
    return [caption.join('\n'), ...records].join('\n\n');
  }
  const set = (row: readonly string[]) =>
    row
      .map((cell, index) => {
        const space = ' '.repeat((widths[index] ?? 0) - lengthOf(cell));
        return table.columns[index]?.align === 'end' ? `${space}${cell}` : `${cell}${space}`;
      })
      .join('  ')
      .trimEnd();
  return [...caption, '', set(labels), widths.map((each) => '-'.repeat(each)).join('  '), ...rows.map(set)].join('\n');
}

function blockText(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return underlined(block.text, block.level === 2 ? '-' : '.');
    case 'paragraph':
      return wrapLines(cleaned(plainText(block.inlines)), width).join('\n');
    case 'list':
      return block.items
        .flatMap((item, index) => {
          const mark = block.ordered ? `${index + 1}. ` : '- ';
          return wrapLines(cleaned(plainText(item)), width, mark, ' '.repeat(mark.length));
        })
        .join('\n');
    case 'table':
      return tableText(block);
    case 'picture':
      return wrapLines(cleaned(block.caption), width).join('\n');
    case 'notice':
      return [
        ...wrapLines(cleaned(block.title), width, '! '),
        ...block.paragraphs.flatMap((line) => ['!', ...wrapLines(cleaned(plainText(line)), width, '! ')]),
      ].join('\n');
  }
}

/** Blocks as plain text, in lines of at most 78 characters. */
export const blocksText = (blocks: readonly Block[]): string => blocks.map(blockText).join('\n\n');

/** Plain text, in lines of at most 78 characters. */
export const toText = (doc: RacksideDocument): string =>
  `${[underlined(doc.title, '='), blocksText(doc.blocks)].join('\n\n')}\n`;

/** Characters as people count them: letters with their accents are one. */
export const lengthOf = (words: string): number => [...words].length;

/**
 * Words set in lines of at most `width` characters, broken at spaces; longer words are cut. `first` stands before
 * the first line and `rest` before the others, both counted.
 */
export function wrapLines(words: string, width: number, first = '', rest = first): string[] {
  const lines: string[] = [];
  let line = '';
  const room = () => width - lengthOf(lines.length === 0 ? first : rest);
  const close = () => {
    lines.push(`${lines.length === 0 ? first : rest}${line}`.trimEnd());
    line = '';
  };
  for (const word of words.split(/\s+/).filter((part) => part !== '')) {
    let left = [...word];
    if (line !== '' && lengthOf(line) + 1 + left.length > room()) close();
    while (left.length > room()) {
      line = left.slice(0, room()).join('');
      left = left.slice(lengthOf(line));
      close();
    }
    line = line === '' ? left.join('') : `${line} ${left.join('')}`;
  }
  if (line !== '' || lines.length === 0) close();
  return lines;
}
