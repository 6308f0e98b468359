import { expect, it } from 'vitest';
import { formatMessage, formatMessageParts } from '../../../engine/message/formatMessage.ts';

/** Plural categories: Unicode CLDR, `one` and `other` for English and German. */
const reps = '{count, plural, one {# rep} other {# reps}}';

it.each([
  [1, '1 rep'],
  [2, '2 reps'],
  [0, '0 reps'],
])('counts %d by the plural rules of English', (count, said) => {
  expect(formatMessage(reps, 'en-GB', { count })).toBe(said);
});

it('writes numbers as the locale does', () => {
  expect(formatMessage('{metres, number, ::.00} m', 'en-GB', { metres: 1.5 })).toBe('1.50 m');
  expect(formatMessage('{metres, number, ::.00} m', 'de-DE', { metres: 1.5 })).toBe('1,50 m');
});

it('lists several values', () => {
  expect(formatMessage('Reps {reps}', 'en-GB', { reps: [1, 2, 5] })).toBe('Reps 1, 2 and 5');
  expect(formatMessage('Wdh. {reps}', 'de-DE', { reps: [1, 2, 5] })).toBe('Wdh. 1, 2 und 5');
});

it('leaves angle brackets and apostrophes of people as they are', () => {
  expect(formatMessage('It’s {name} < 3', 'en-GB', { name: '<b>O’Neil</b>' })).toBe('It’s <b>O’Neil</b> < 3');
});

it('refuses a message whose value is missing', () => {
  expect(() => formatMessage('{count} reps', 'en-GB')).toThrow();
});

it('gives back in parts what is no text, between the words around it', () => {
  const moment = { atS: 4.2 };
  expect(formatMessageParts('{exercise} ({moment})', 'en-GB', { exercise: 'Squat {x}', moment })).toEqual([
    'Squat {x} (',
    moment,
    ')',
  ]);
});
