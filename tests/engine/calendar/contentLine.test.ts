import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { contentLine, textValue } from '../../../engine/calendar/contentLine.ts';

const unfold = (lines: string): string => lines.replaceAll('\r\n ', '').replace(/\r\n$/, '');

describe('a content line (RFC 5545, section 3.1)', () => {
  it('is folded after 75 octets: 75 of ASCII stay, the 76th begins the next line after a space', () => {
    expect(contentLine('x'.repeat(75))).toBe(`${'x'.repeat(75)}\r\n`);
    expect(contentLine('x'.repeat(76))).toBe(`${'x'.repeat(75)}\r\n x\r\n`);
  });

  it('parts no character: 38 of two octets are 76', () => {
    expect(contentLine('ü'.repeat(38))).toBe(`${'ü'.repeat(37)}\r\n ü\r\n`);
    // Four octets each: 18 are 72, the 19th would be 76.
    expect(contentLine('🏋'.repeat(19))).toBe(`${'🏋'.repeat(18)}\r\n 🏋\r\n`);
  });

  it('comes back whole when it is unfolded', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 400 }), (words) => {
        fc.pre(!/[\r\n]/.test(words));
        const lines = contentLine(words);
        expect(unfold(lines)).toBe(words);
        for (const line of lines.split('\r\n')) expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      }),
    );
  });
});

describe('a TEXT value (RFC 5545, section 3.3.11)', () => {
  it('escapes backslash, semicolon, comma and line end, and no colon', () => {
    expect(textValue('a\\b;c,d:e"f\ng')).toBe('a\\\\b\\;c\\,d:e"f\\ng');
  });

  it.each(['a\r\nb', 'a\rb', 'a\u2028b', 'a\u0085b'])('knows every line end: %j', (words) => {
    expect(textValue(words)).toBe('a\\nb');
  });

  it('holds no controls', () => {
    expect(textValue('a\u0000\u0007\tb')).toBe('a\tb');
  });
});
