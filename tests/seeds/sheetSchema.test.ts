import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { gradeSession } from '../../engine/grading/gradeSession.ts';
import type { Review } from '../../engine/review/review.ts';
import type { SheetExtras } from '../../engine/sheet/sheetExtras.ts';
import { sheetJson } from '../../engine/sheet/sheetJson.ts';
import { sheetSchema } from '../../engine/sheet/sheetJsonSchema.ts';
import { catalogue, sessions } from '../engine/letter/sample.ts';
import { hostileWords, sessionWithNotes } from '../engine/sheet/hostileWords.ts';
import { measuredRep, measuredSet } from '../engine/sheet/measuredSample.ts';
import { sheetJsonSchemaText } from './sheetJsonSchema.ts';

const published = readFileSync(new URL('../../seeds/sheet.schema.json', import.meta.url), 'utf8');
const validate = new Ajv({ strict: true, allowUnionTypes: true, formats: { date: /^\d{4}-\d{2}-\d{2}$/ } }).compile(
  JSON.parse(published),
);
const written = (review: Review, extras?: SheetExtras) =>
  JSON.parse(sheetJson(review, gradeSession(review, catalogue), catalogue, extras));

describe('the sheet as JSON', () => {
  it('has a schema in seeds that is the product’s own', () => {
    expect(published).toBe(sheetJsonSchemaText());
  });

  it('fits the schema for any session, a flag in it for each of the review', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const sheet = written(review);
        expect(validate(sheet), JSON.stringify(validate.errors)).toBe(true);
        expect(v.is(sheetSchema, sheet)).toBe(true);
        const ids = review.entries.flatMap((entry) => entry.flags.map(({ id }) => id));
        expect(sheet.flags.map(({ id }: { id: string }) => id).sort()).toEqual(ids.sort());
      }),
      { numRuns: 80 },
    );
  });

  it('gives any words back as they were written', () => {
    fc.assert(
      fc.property(fc.array(hostileWords, { maxLength: 4 }), (notes) => {
        const { flags } = written(sessionWithNotes(notes));
        expect(flags.map(({ note }: { note: string }) => note)).toEqual(notes);
      }),
      { numRuns: 100 },
    );
  });

  it('holds what was measured, and the names of stills', () => {
    const sheet = written(sessionWithNotes(['']), {
      measures: new Map([['back-squat-clip', measuredSet([measuredRep(1), measuredRep(2, { joints: null })])]]),
      stills: new Map([['back-squat-0', 'still.jpg']]),
    });
    expect(validate(sheet), JSON.stringify(validate.errors)).toBe(true);
    expect(sheet.flags[0]).toMatchObject({ still: 'still.jpg', strokes: '||', atS: 1.333333, reps: [1] });
    expect(sheet.measures[0].reps).toMatchObject([
      { rep: 1, romM: { value: 0.548, plusMinus: 0.011 }, pauseShortenedS: null, depth: 'reached' },
      { rep: 2, depth: null, depthM: null },
    ]);
  });

  it.each([
    ['another format', { format: 'something-else' }],
    ['a field of its own', { surprise: true }],
    ['flags that are no list', { flags: {} }],
    ['a score beyond 100', { grade: { state: 'graded', letter: 'A', score: 101, range: null, byHand: null } }],
  ])('is no longer one with %s', (_, change) => {
    const wrong = { ...written(sessionWithNotes(['a'])), ...change };
    expect(validate(wrong)).toBe(false);
    expect(v.is(sheetSchema, wrong)).toBe(false);
  });
});
