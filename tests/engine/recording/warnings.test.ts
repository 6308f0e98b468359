import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { warning, warningSchema } from '../../../engine/recording/warnings.ts';

describe('a stored warning', () => {
  it('is read back as it was given', () => {
    const given = warning('discLost', { lost: 12, frames: 300 });
    expect(v.parse(warningSchema, JSON.parse(JSON.stringify(given)))).toEqual(given);
  });

  it.each([
    ['is not known', { id: 'gymWasLoud', values: {} }],
    ['is the name of something that every object has', { id: 'constructor', values: {} }],
    ['lacks a number', { id: 'discLost', values: { lost: 12 } }],
    ['has a number too many', { id: 'noDisc', values: { lost: 12 } }],
    ['has words for a number', { id: 'offAxis', values: { degrees: 'twelve' } }],
    ['is a sentence', 'No disc was found.'],
  ])('is refused when it %s', (_, stored) => {
    expect(v.safeParse(warningSchema, stored).success).toBe(false);
  });
});
