import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseByteRange } from '../../../../electron/main/page/byteRange.ts';

// The examples of RFC 9110, section 14.1.2, for a representation of 10,000 bytes.
test.each([
  ['bytes=0-499', { first: 0, last: 499 }],
  ['bytes=500-999', { first: 500, last: 999 }],
  ['bytes=-500', { first: 9500, last: 9999 }],
  ['bytes=9500-', { first: 9500, last: 9999 }],
])('%s of 10,000 bytes', (header, range) => {
  expect(parseByteRange(header, 10_000)).toEqual(range);
});

test('no header asks for the whole', () => {
  expect(parseByteRange(null, 10)).toBe('whole');
});

// RFC 9110, section 14.1.2: a last position beyond the end, or a suffix longer than the whole, is cut.
test('a range over the end is cut at the end', () => {
  expect(parseByteRange('bytes=4-99', 10)).toEqual({ first: 4, last: 9 });
  expect(parseByteRange('bytes=-99', 10)).toEqual({ first: 0, last: 9 });
});

test.each([
  'bytes=10-',
  'bytes=10-12',
  'bytes=5-4',
  'bytes=-0',
  'bytes=-',
  'bytes=',
  'bytes=0-1,3-4',
  'bytes=a-b',
  'bytes=0x0-5',
  'bytes=1.5-3',
  'bytes=+1-3',
  'bytes= 1-3',
  'lines=0-1',
  '0-1',
  '',
  `bytes=${'9'.repeat(400)}-`,
])('"%s" of 10 bytes can not be given', (header) => {
  expect(parseByteRange(header, 10)).toBe('unsatisfiable');
});

test('an empty file has no range to give', () => {
  for (const header of ['bytes=0-', 'bytes=0-0', 'bytes=-1']) expect(parseByteRange(header, 0)).toBe('unsatisfiable');
});

test('whatever is asked, a range that is given lies inside the file', () => {
  const word = fc.oneof(fc.nat(200).map(String), fc.constant(''));
  fc.assert(
    fc.property(word, word, fc.nat(100), (from, to, size) => {
      const range = parseByteRange(`bytes=${from}-${to}`, size);
      if (range === 'unsatisfiable' || range === 'whole') return range !== 'whole';
      return 0 <= range.first && range.first <= range.last && range.last < size;
    }),
  );
});
