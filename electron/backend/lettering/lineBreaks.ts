const graphemes = new Intl.Segmenter('und', { granularity: 'grapheme' });

/** Scripts written without spaces, whose lines may break between any two characters. Korean has spaces. */
const unspaced =
  /^[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Bopomofo}\u3000-\u30FF\uFF01-\uFF9F]/u;

/** What may not begin a line: marks that close, end or lengthen, and small kana. */
const beginsNoLine =
  /^[\p{Pe}\p{Pf}、。，．・：；？！゛゜ヽヾゝゞ々〻ー～〜…‥,.!?:;%％°'"\u2019ぁぃぅぇぉっゃゅょゎゕゖァィゥェォッャュョヮヵヶㇰ-ㇿｧ-ｯｰ､｡･ﾞﾟ]/u;
/** What may not end a line: marks that open. */
const endsNoLine = /^[\p{Ps}\p{Pi}\p{Sc}'"]/u;

/**
 * Where a line may break besides at spaces, in scripts that have none: offsets of the characters that may begin a line
 * (Unicode Standard Annex #14, rules LB13, LB14, LB19a, LB21 and LB31; small kana stay with what is before them). The
 * `linebreak` package follows an edition without LB19a, and would never break beside Chinese quotation marks.
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
