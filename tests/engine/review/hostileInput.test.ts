import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parseReview } from '../../../engine/review/parseReview.ts';
import { catalogue, handWritten, type Loose, spoilt } from './sample.ts';

const sentenceFor = (input: unknown): string => {
  const parsed = parseReview(input, catalogue);
  return parsed.ok ? '' : parsed.sentence;
};

const nested = (depth: number, wrap: (inner: unknown) => unknown): unknown => {
  let value: unknown = 1;
  for (let i = 0; i < depth; i++) value = wrap(value);
  return value;
};

const attacks: readonly [string, unknown][] = [
  ['null', null],
  ['nothing', undefined],
  ['a number', 7],
  ['a text', 'review'],
  ['a list', []],
  ['a function', () => 1],
  ['a date', new Date(0)],
  ['a map', new Map()],
  ['an object with a prototype of its own', Object.create({ format: 'rackside-review' })],
  ['a __proto__ key', JSON.parse('{"__proto__":{"format":"rackside-review"}}')],
  [
    'a __proto__ key deep inside',
    spoilt((r) => (r.entries[0].plan = JSON.parse('{"sets":1,"reps":1,"__proto__":{}}'))),
  ],
  ['a constructor key', spoilt((r) => (r.trainee.constructor = { name: 'x' }))],
  ['a prototype key', spoilt((r) => (r.session.prototype = 1))],
  ['NaN', spoilt((r) => (r.entries[0].clips[0].realTimeFactor = Number.NaN))],
  ['Infinity', spoilt((r) => (r.entries[0].flags[2].at = { seconds: Number.POSITIVE_INFINITY }))],
  ['a number in quotes', spoilt((r) => (r.entries[0].flags[2].at = { seconds: '2' }))],
  ['a bigint', spoilt((r) => (r.version = 1n))],
  ['a text of 10 MB', spoilt((r) => (r.session.notes = 'x'.repeat(10_000_000)))],
  ['a text of 10 MB where any text is allowed', spoilt((r) => (r.entries[0].exercise = 'x'.repeat(10_000_000)))],
  ['a key of 10 MB', spoilt((r) => (r.trainee['k'.repeat(10_000_000)] = 1))],
  ['lists 100,000 deep', nested(100_000, (inner) => [inner])],
  ['objects 100,000 deep', nested(100_000, (inner) => ({ entries: inner }))],
  ['lists deep inside', spoilt((r) => (r.entries[0].flags[0].reps = nested(50_000, (inner) => [inner])))],
  ['a list as an object', spoilt((r) => (r.entries[0].clips[0] = ['a']))],
  ['a list with a hole', spoilt((r) => (r.entries[0].flags = new Array(3)))],
  ['a list of four thousand million', spoilt((r) => (r.entries = new Array(4_294_967_295)))],
];

it.each(attacks)('refuses %s in one sentence', (_name, input) => {
  const sentence = sentenceFor(input);
  expect(sentence).toMatch(/^[^\n\r]{10,400}\.$/);
  expect(({} as Loose).format).toBeUndefined();
});

it.each([
  ['__proto__', JSON.parse('{"trainee":{"__proto__":{"minor":true}}}')],
  ['constructor', { trainee: { constructor: {} } }],
  ['prototype', { trainee: { prototype: {} } }],
])('says that the name %s is not allowed', (_name, input) => {
  expect(sentenceFor(input)).toBe('trainee has a field with a name that is not allowed: take it out.');
});

it('refuses something that goes round in a circle', () => {
  const circle: Loose = handWritten();
  circle.entries[0].plan = circle;
  expect(sentenceFor(circle)).toContain('nested too deeply');
});

/** The longest piece of `input` that stands in `sentence`. */
const longestEcho = (sentence: string, input: string): number => {
  let longest = 0;
  for (let from = 0; from < sentence.length; from++) {
    while (input.includes(sentence.slice(from, from + longest + 1)) && from + longest < sentence.length) longest += 1;
  }
  return longest;
};

describe('what a sentence repeats of the input', () => {
  const nasty = fc.oneof(
    fc.string({ minLength: 61, maxLength: 300, unit: 'grapheme' }),
    fc.string({
      minLength: 61,
      maxLength: 300,
      unit: fc.constantFrom('\u0000', '\u001b', '\u202e', '\ud800', '\n', 'é', '9', '"'),
    }),
  );
  const places: readonly ((review: Loose, text: string) => void)[] = [
    (r, text) => (r.format = text),
    (r, text) => (r[text] = 1),
    (r, text) => (r.entries[0].exercise = text),
    (r, text) => (r.entries[0].flags[0].fault = text),
    (r, text) => (r.entries[0].flags[0].severity = text),
    (r, text) => (r.entries[0].flags[0].clip = text),
    (r, text) => (r.rubric = { id: text, version: 1 }),
    (r, text) => (r.session.date = text),
    (r, text) => (r.entries[0].plan.tempo = text),
    (r, text) => (r.entries[0].plan.reps = text),
    (r, text) => (r.entries[0].plan = { sets: [{ reps: 8 }, { reps: text }] }),
    (r, text) => (r.entries[0].plan = { sets: [{ reps: 8, [text]: 1 }] }),
    (r, text) => (r.trainee.equipment = text),
    (r, text) => (r.session.equipment = ['barbell', text]),
  ];

  it('is at most 60 characters, and never a control or direction character', () => {
    fc.assert(
      fc.property(nasty, fc.constantFrom(...places), (text, place) => {
        const sentence = sentenceFor(spoilt((review) => place(review, text)));
        expect(sentence).not.toBe('');
        expect(sentence).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
        expect(longestEcho(sentence, text)).toBeLessThanOrEqual(60);
      }),
      { numRuns: 500 },
    );
  });
});

it('never throws, whatever it is given', () => {
  fc.assert(
    fc.property(
      fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true, withSparseArray: true }),
      (input) => {
        expect(parseReview(input, catalogue).ok).toBe(false);
      },
    ),
    { numRuns: 500 },
  );
});

it('never throws on a good review with one part replaced by anything', () => {
  const paths = ['trainee', 'session', 'entries', 'rubric', 'voice', 'coach'] as const;
  fc.assert(
    fc.property(fc.anything(), fc.constantFrom(...paths), fc.boolean(), (value, path, inside) => {
      const parsed = parseReview(
        spoilt((review) => {
          if (inside) review.entries[0][path === 'trainee' ? 'plan' : path === 'session' ? 'flags' : 'clips'] = value;
          else review[path] = value;
        }),
        catalogue,
      );
      expect(parsed.ok || parsed.sentence.length > 10).toBe(true);
    }),
    { numRuns: 500 },
  );
});

describe('JSON of a file', () => {
  it.each([
    ['brackets 1,000,000 deep', '['.repeat(1_000_000) + ']'.repeat(1_000_000)],
    ['a number that is none', '{"version":1e999}'],
  ])('%s: one sentence', (_name, text) => {
    const parsed = parseReview(JSON.parse(text), catalogue);
    expect(parsed.ok ? '' : parsed.sentence).toMatch(/^The review [^\n]+\.$|^version [^\n]+\.$/);
  });
});
