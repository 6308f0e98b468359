export type Column = { readonly label: string; readonly align: 'start' | 'end' };

/** Columns of words, one for each label. */
export const textColumns = (...labels: readonly string[]): Column[] =>
  labels.map((label) => ({ label, align: 'start' }));

/** Columns of numbers, one for each label, aligned at the end. */
export const numberColumns = (...labels: readonly string[]): Column[] =>
  labels.map((label) => ({ label, align: 'end' }));

/** A plain-text table: columns as wide as their widest cell, two spaces apart, with a rule under the labels. */
export function textTable(columns: readonly Column[], rows: readonly (readonly string[])[]): string {
  const widths = columns.map(({ label }, index) =>
    Math.max(...[label, ...rows.map((row) => row[index] ?? '')].map(widthOf)),
  );
  const line = (cells: readonly string[]) =>
    columns
      .map(({ align }, index) => pad(cells[index] ?? '', widths[index] ?? 0, align))
      .join('  ')
      .trimEnd();
  return [
    line(columns.map(({ label }) => label)),
    widths.map((width) => '-'.repeat(width)).join('  '),
    ...rows.map(line),
  ]
    .map((text) => `${text}\n`)
    .join('');
}

/** Names and values in two columns without labels. */
export function textPairs(pairs: readonly (readonly [name: string, value: string])[]): string {
  const width = Math.max(...pairs.map(([name]) => widthOf(name)));
  return pairs.map(([name, value]) => `${pad(name, width, 'start')}  ${value}\n`).join('');
}

function pad(text: string, width: number, align: Column['align']): string {
  const space = ' '.repeat(Math.max(0, width - widthOf(text)));
  return align === 'start' ? text + space : space + text;
}

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

function widthOf(text: string): number {
  return [...segmenter.segment(text)].length;
}
