import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { wrapText } from '../../../../../../electron/backend/handover/render/overlay/wrapText.ts';

const letters = (text: string) => [...text].length;

describe('wrapped text', () => {
  it('breaks at spaces, and within a word that is wider than a line', () => {
    expect(wrapText('one two three', 7, letters)).toEqual(['one two', 'three']);
    expect(wrapText('a Kniebeugenständer b', 8, letters)).toEqual(['a', 'Kniebeug', 'enstände', 'r b']);
    expect(wrapText('膝を外に押し出す', 3, letters)).toEqual(['膝を外', 'に押し', '出す']);
  });

  it('loses no letter and overruns no line', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), fc.integer({ min: 2, max: 40 }), (text, width) => {
        const lines = wrapText(text, width, letters);
        expect(lines.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
        expect(lines.every((line) => letters(line) <= width)).toBe(true);
      }),
    );
  });

  it('begins no line of Japanese with what closes or lengthens (JIS X 4051)', () => {
    expect(wrapText('膝を外に。押し出す', 4, letters)).toEqual(['膝を外', 'に。押し', '出す']);
    expect(wrapText('もっとゆっくり', 3, letters)).toEqual(['もっと', 'ゆっく', 'り']);
    expect(wrapText('Rep 3を見て', 6, letters)).toEqual(['Rep 3を', '見て']);
  });
});
