/** Most characters of a line of subtitles (common practice of subtitling, from memory). */
export const mostCharacters = 42;

const isolate = '\u2068';
const endOfIsolate = '\u2069';
const characters = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** Characters that may join the one before them; in words without any, each code point is a letter. */
const joining = /[\p{M}\p{RI}\p{Emoji_Modifier}\p{Join_Control}\u0E33\u0EB3\u1100-\u11FF\uA960-\uA97F\uD7B0-\uD7FF]/u;

/** Letters with their marks. Most texts have no marks, so the slow look-up is skipped for them. */
function charactersOf(words: string): string[] {
  return joining.test(words) ? [...characters.segment(words)].map(({ segment }) => segment) : [...words];
}

const isMark = (character: string): boolean => character === isolate || character === endOfIsolate;

/** Characters as people count them; the marks that isolate a direction of writing are none. */
export function visibleLength(words: string): number {
  return charactersOf(words).filter((character) => !isMark(character)).length;
}

/** A word in pieces that fit into a line. */
function cut(word: string): string[] {
  const pieces: string[] = [];
  let [piece, length] = ['', 0];
  for (const character of charactersOf(word)) {
    if (length === mostCharacters && character !== endOfIsolate) {
      pieces.push(piece);
      [piece, length] = ['', 0];
    }
    piece += character;
    length += isMark(character) ? 0 : 1;
  }
  return [...pieces, piece];
}

/** An isolate ends with its line (Unicode bidirectional algorithm, X5c): it is closed there and opened on the next. */
function closeIsolates(lines: readonly string[]): string[] {
  let open = 0;
  return lines.map((line) => {
    const before = open;
    for (const character of line) {
      if (character === isolate) open += 1;
      else if (character === endOfIsolate) open = Math.max(0, open - 1);
    }
    return `${isolate.repeat(before)}${line}${endOfIsolate.repeat(open)}`;
  });
}

/** One paragraph in lines of at most 42 characters, broken at spaces; longer words are cut. No line is empty. */
export function subtitleLines(paragraph: string): string[] {
  const lines: string[] = [];
  let [line, length] = ['', 0];
  const close = () => {
    if (line !== '') lines.push(line);
    [line, length] = ['', 0];
  };
  const add = (piece: string) => {
    length += visibleLength(piece) + (line === '' ? 0 : 1);
    line = line === '' ? piece : `${line} ${piece}`;
  };
  for (const word of paragraph.split(' ')) {
    const [first = '', ...others] = cut(word);
    if (length + 1 + visibleLength(first) > mostCharacters) close();
    if (first !== '') add(first);
    for (const piece of others) {
      close();
      add(piece);
    }
  }
  close();
  return closeIsolates(lines);
}
