import fc from 'fast-check';
import { expect, it } from 'vitest';
import { parseReview } from '../../../engine/review/parseReview.ts';
import { writeReview } from '../../../engine/review/writeReview.ts';
import { catalogue as graded, reviews } from '../grading/arbitraries.ts';
import { catalogue, handWritten } from './sample.ts';

const reviewOf = (text: string, from = catalogue) => {
  const parsed = parseReview(JSON.parse(text), from);
  if (!parsed.ok) throw new Error(parsed.sentence);
  return parsed.review;
};

it('reading, writing and reading again gives the same review and the same text', () => {
  const first = reviewOf(JSON.stringify(handWritten()));
  const text = writeReview(first);
  expect(reviewOf(text)).toEqual(first);
  expect(writeReview(reviewOf(text))).toBe(text);
});

it('does so for any review', () => {
  fc.assert(
    fc.property(reviews, fc.string({ unit: 'binary', maxLength: 300 }), (review, notes) => {
      const whole = { ...review, session: { ...review.session, notes } };
      const read = reviewOf(writeReview(whole), graded);
      expect(reviewOf(writeReview(read), graded)).toEqual(read);
      expect(read).toEqual(whole);
    }),
  );
});

/** The same data with every object's keys the other way round. */
const turned = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(turned);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([key, inner]) => [key, turned(inner)]),
  );
};

it('writes one text whatever the order of the keys, ending with a line feed', () => {
  const text = writeReview(reviewOf(JSON.stringify(handWritten())));
  expect(writeReview(reviewOf(JSON.stringify(turned(handWritten()))))).toBe(text);
  expect(text.endsWith('}\n')).toBe(true);
});

it('reads a file that begins with a byte order mark', () => {});
