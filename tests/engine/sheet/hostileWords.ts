import fc from 'fast-check';
import type { Review } from '../../../engine/review/review.ts';
import { draft, sessionOf } from '../letter/sample.ts';

/** Words that some format gives a meaning to. */
export const samples = [
  'a --> b',
  '00:00:01.000 --> 00:00:02.000',
  'NOTE a\n\nWEBVTT\n\n1\n\n',
  '<i>slow</i> & <b>fast &amp; low',
  '{\\an8}top {\\b1}',
  'C:\\new\\Name\\hard',
  "=cmd|' /C calc'!A0",
  '+1',
  '-1',
  '@SUM(A1)',
  '\tx',
  '\rx',
  'comma, "quote"; semicolon: colon',
  'first\r\nsecond\rthird\nfourth\u2028fifth\u0085sixth',
  'انزل ببطء ثم اصعد بسرعة، ولا تترك الركبة تميل إلى الداخل في أسفل الحركة',
  'Rep 2: לאט יותר, then up',
  'ünïcödé 🏋️‍♀️👩‍👩‍👧 e\u0301',
  '\ud800 alone',
  'nul\u0000 bell\u0007 \ufeff\u202eturned\u202c',
  'x'.repeat(300),
  '{count} {trainee} $& $1',
] as const;

/** Any words a person may write into a note, up to the longest that the review format takes. */
export const hostileWords: fc.Arbitrary<string> = fc
  .array(
    fc.oneof(fc.constantFrom(...samples), fc.string({ unit: 'binary', maxLength: 40 }), fc.lorem({ maxCount: 30 })),
    { maxLength: 6 },
  )
  .map((parts) => parts.join(' ').slice(0, 2000));

/** A session with one remark a note, all on one clip of 30 seconds. */
export function sessionWithNotes(notes: readonly string[]): Review {
  return sessionOf([
    draft({
      flags: notes.map((note, index) => ({ criterion: 'depth', severity: 'adjust', reps: [(index % 5) + 1], note })),
    }),
  ]);
}

/** What is left of words where spaces, controls, and marks of direction may differ, and the mark that ends a sentence. */
export const core = (words: string): string =>
  words
    .toWellFormed()
    .replace(/[\s\p{Cc}\uFEFF\u2028\u2029\u2060\u202A-\u202E\u2066-\u2069\u200E\u200F]/gu, '')
    .replace(/[.,;:]$/, '');
