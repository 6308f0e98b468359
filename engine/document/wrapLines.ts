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
