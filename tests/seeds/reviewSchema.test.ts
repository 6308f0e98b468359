import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, it } from 'vitest';
import { parseReview } from '../../engine/review/parseReview.ts';
import { reviewJsonSchema, reviewJsonSchemaText } from './reviewJsonSchema.ts';
import { shipped, shippedUnder } from './shippedCatalogue.ts';

const text = (name: string): string => readFileSync(new URL(`../../seeds/${name}`, import.meta.url), 'utf8');
const example = (): Record<string, unknown> => JSON.parse(text('example-session.json'));
const isoDay = /^\d{4}-\d{2}-\d{2}$/;
const validate = new Ajv({ strict: true, allowUnionTypes: true, formats: { date: isoDay } }).compile(
  JSON.parse(text('review.schema.json')),
);

describe('the JSON Schema of the review format', () => {
  it('is the one that the product reads with', () => {
    expect(JSON.parse(text('review.schema.json'))).toEqual(JSON.parse(JSON.stringify(reviewJsonSchema())));
    expect(text('review.schema.json')).toBe(reviewJsonSchemaText());
  });

  it.each(['example-session.json', 'demo/session.json', 'demo/earlier.json'])(
    'accepts %s, and so does the product under its rubric',
    (name) => {
      const review: { readonly rubric?: { readonly version: number } } = JSON.parse(text(name));
      expect(validate(review), JSON.stringify(validate.errors)).toBe(true);
      expect(parseReview(review, shippedUnder(review.rubric?.version ?? 1))).toMatchObject({ ok: true });
    },
  );

  const wrong: readonly (readonly [string, Record<string, unknown>])[] = [
    ['another format', { format: 'something-else' }],
    ['a later version', { version: 5 }],
    ['a place that is none', { trainee: { name: 'Robin Vale', equipment: 'moon' } }],
    ['equipment that is none', { session: { date: '2026-01-31', equipment: ['barbell', 'broom'] } }],
    ['a field of its own', { surprise: true }],
    ['a date in words', { session: { date: 'yesterday' } }],
    ['a trainee without a name', { trainee: {} }],
    ['entries that are no list', { entries: {} }],
    [
      'a rep before the first',
      {
        entries: [
          { id: 'e', exercise: 'back-squat', clips: [], ticks: [{ clip: 'c', criterion: 'depth', reps: [0] }] },
        ],
      },
    ],
    [
      'an unknown severity',
      {
        entries: [
          {
            id: 'e',
            exercise: 'back-squat',
            clips: [],
            flags: [{ clip: 'c', criterion: 'depth', severity: 'awful', reps: 'set', at: { seconds: 1 } }],
          },
        ],
      },
    ],
    [
      'a listed set without reps',
      { entries: [{ id: 'e', exercise: 'back-squat', clips: [], plan: { sets: [{ reps: 5 }, { loadKg: 20 }] } }] },
    ],
    ['a list of no sets', { entries: [{ id: 'e', exercise: 'back-squat', clips: [], plan: { sets: [] } }] }],
    [
      'a tempo in words',
      { entries: [{ id: 'e', exercise: 'back-squat', clips: [], plan: { sets: 3, reps: 5, tempo: 'slow' } }] },
    ],
  ];

  it.each(wrong)('refuses %s, and so does the product', (_, change) => {
    const review = { ...example(), ...change };
    expect(validate(review)).toBe(false);
    expect(parseReview(JSON.parse(JSON.stringify(review)), shipped)).toMatchObject({ ok: false });
  });
});
