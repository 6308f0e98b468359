import { describe, expect, it } from 'vitest';
import { unspacedBreaks } from '../../../../electron/backend/lettering/lineBreaks.ts';

const cut = (text: string): string =>
  [...text.matchAll(/./gsu)]
    .map(({ 0: character, index }) => (unspacedBreaks(text).has(index) ? `|${character}` : character))
    .join('');

describe('where a line of a script without spaces may end', () => {
  // Unicode Standard Annex #14, table 2: ID ÷ ID, × CL, OP ×, × EX, × CJ, × NS; AL ÷ ID.
  it.each([
    ['深さが', '深|さ|が'],
    ['膝を、外に。', '膝|を、|外|に。'],
    ['「深く」（しゃがむ）', '「深|く」|（しゃ|が|む）'],
    ['ウォームアップ', 'ウォー|ム|アッ|プ'],
    ['Rep 3を見て！', 'Rep 3|を|見|て！'],
    ['慢慢下蹲，膝盖。', '慢|慢|下|蹲，|膝|盖。'],
  ])('in %s', (text, expected) => {
    expect(cut(text)).toBe(expected);
  });

  it.each(['Back squat', '천천히 앉았다', 'انزل ببطء', 'w'.repeat(300)])('not in %s', (text) => {
    expect(unspacedBreaks(text).size).toBe(0);
  });

  it('never within a character that is written as several', () => {
    expect([...unspacedBreaks('か\u3099く')]).toEqual([2]);
  });
});
