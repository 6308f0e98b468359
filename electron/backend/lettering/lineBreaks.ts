const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** Scripts that are written without spaces and broken between any two characters. Korean has spaces. */
const unspaced =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Bopomofo}\u3000-\u30FF\uFF01-\uFF9F]/u;

/** What begins no line: marks that close, end or lengthen, and small kana. */
const beginsNoLine =
  /^[\p{Pe}\p{Pf}、。，．・：；？！゛゜ヽヾゝゞ々〻ー～〜…‥,.!?:;%％°'"\u2019ぁぃぅぇぉっゃゅょゎゕゖァィゥェォッャュョヮヵヶㇰ-ㇿｧ-ｯｰ､｡･ﾞﾟ]/u;
/** What ends no line: marks that open. */
const endsNoLine = /^[\p{Ps}\p{Pi}\p{Sc}'"]/u;

/**
 * Where a text may be broken besides at its spaces: offsets of the characters that may begin a line, between characters of
 * scripts that have no spaces (Unicode Standard Annex #14, rules LB13, LB14, LB21 and LB31, small kana kept with what is
 * before them).
 */
export function unspacedBreaks(text: string): ReadonlySet<number> {
  const breaks = new Set<number>();
  if (!/[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Bopomofo}]/u.test(text)) return breaks;
  let before: string | null = null;
  for (const { segment, index } of graphemes.segment(text)) {
    const meets = before !== null && (unspaced.test(before) || unspaced.test(segment));
    if (meets && before !== null && !/\s/.test(before + segment)) {
      if (!beginsNoLine.test(segment) && !endsNoLine.test(before)) breaks.add(index);
    }
    before = segment;
  }
  return breaks;
}
