import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equipmentItems, places } from '../../../engine/exercises/equipment.ts';
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

it('keeps a plain note as one without a severity', () => {
  const [entry] = handWritten().entries;
  const note = {
    id: 'n',
    clip: 'b',
    criterion: 'depth',
    severity: null,
    reps: 'set',
    at: { seconds: 2 },
    note: 'belt',
  };
  const read = reviewOf(JSON.stringify({ ...handWritten(), entries: [{ ...entry, flags: [note] }] }));
  expect(reviewOf(writeReview(read)).entries[0]?.flags).toEqual([{ ...note, fault: null, cue: '' }]);
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

describe('what a file holds', () => {
  const planned = (sets: readonly object[]) => ({
    ...handWritten(),
    entries: handWritten().entries.map((entry) => ({ ...entry, plan: { sets } })),
  });
  const written = (input: object) => JSON.parse(writeReview(reviewOf(JSON.stringify(input))));

  it('is version 4, whatever the review holds', () => {
    expect(written(handWritten()).version).toBe(4);
    expect(written(planned([{ reps: 8, loadKg: 20 }, { reps: 12 }])).version).toBe(4);
  });

  it('has equal sets as their number, and others one by one', () => {
    expect(written(planned([{ reps: 8 }, { reps: 8 }])).entries[0].plan).toEqual({ sets: 2, reps: 8 });
    const differing = [{ reps: 8, loadKg: 20 }, { reps: 12 }];
    expect(written(planned(differing)).entries[0].plan).toEqual({ sets: differing });
  });
});

it('loses nothing of any plan and any equipment', () => {
  const load = fc.option(fc.integer({ min: 0, max: 400 }), { nil: undefined });
  const set = fc
    .record({ reps: fc.integer({ min: 1, max: 40 }), loadKg: load })
    .map(({ reps, loadKg }) => (loadKg === undefined ? { reps } : { reps, loadKg: loadKg / 2 }));
  const sets = fc.array(set, { minLength: 1, maxLength: 8 });
  const equipment = fc.oneof(fc.constantFrom(...places), fc.subarray([...equipmentItems]));
  fc.assert(
    fc.property(reviews, sets, equipment, (review, listed, usual) => {
      const trainee = { ...review.trainee, equipment: usual };
      const whole = { ...review, trainee, entries: review.entries.map((one) => ({ ...one, plan: { sets: listed } })) };
      expect(reviewOf(writeReview(whole), graded)).toEqual(whole);
    }),
  );
});

describe('how a clip is framed', () => {
  const framed = (clip: object) => ({
    ...handWritten(),
    entries: handWritten().entries.map((entry) => ({
      ...entry,
      clips: entry.clips.map((one, index) => (index === 0 ? { ...one, ...clip } : one)),
    })),
  });
  const written = (clip: object) => JSON.parse(writeReview(reviewOf(JSON.stringify(framed(clip))))).entries[0].clips[0];
  const crop = { leftPx: 10, topPx: 0, widthPx: 200, heightPx: 100 };
  const section = { from: { frame: 3, ticks: 1536 }, to: { frame: 9, ticks: 4608 } };

  it('comes back as it was, what is as filmed left out', () => {
    expect(written({ framing: { turnDeg: 90, crop, brightness: 1.5 }, section })).toMatchObject({
      framing: { turnDeg: 90, crop, brightness: 1.5 },
      section,
    });
    expect(written({ framing: { mirrored: true } }).framing).toEqual({ mirrored: true });
    expect(written({ framing: { turnDeg: 0, brightness: 1 } })).not.toHaveProperty('framing');
  });

  it.each([
    [
      'a section that ends before it begins',
      { section: { from: section.to, to: section.from } },
      /put its frames in order/,
    ],
    ['an eighth of a turn', { framing: { turnDeg: 45 } }, /framing must be one of 0, 90, 180, 270/],
    ['no light at all', { framing: { brightness: 0 } }, /must be 0.25 or more/],
    ['a strip of the picture too thin to see', { framing: { crop: { ...crop, widthPx: 2 } } }, /must be 16 or more/],
    ['a section told in seconds', { section: { from: { seconds: 1 }, to: { seconds: 2 } } }, /section/],
  ])('is not %s', (_, clip, sentence) => {
    const parsed = parseReview(framed(clip), catalogue);
    expect(parsed.ok ? '' : parsed.sentence).toMatch(sentence);
  });
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

describe('clips that show one set from two sides', () => {
  const filmedTwice = (sameSet: object, reps: unknown[] = handWritten().entries[0]?.clips[0]?.reps ?? []) => {
    const [entry] = handWritten().entries;
    const [side, second] = entry?.clips ?? [];
    return { ...handWritten(), entries: [{ ...entry, flags: [], clips: [side, { ...second, reps, sameSet }] }] };
  };
  const sentenceFor = (input: object): string => {
    const parsed = parseReview(input, catalogue);
    return parsed.ok ? '' : parsed.sentence;
  };

  it('are written with the clip that leads and how far apart the clocks are', () => {
    const read = reviewOf(JSON.stringify(filmedTwice({ clip: 'a', offsetUs: -1_250_000 })));
    expect(reviewOf(writeReview(read)).entries[0]?.clips[1]?.sameSet).toEqual({ clip: 'a', offsetUs: -1_250_000 });
  });

  it.each([
    ['no clip of the entry', { clip: 'z', offsetUs: 0 }, 'names "z", which is no other clip of the entry'],
    ['the clip itself', { clip: 'b', offsetUs: 0 }, 'names "b", which is no other clip of the entry'],
    ['half a microsecond', { clip: 'a', offsetUs: 0.5 }, 'sameSet must be a whole number, but is 0.5'],
  ])('are refused where the set is that of %s', (_what, sameSet, sentence) => {
    expect(sentenceFor(filmedTwice(sameSet))).toContain(sentence);
  });

  it('are refused where they do not have the same reps', () => {
    expect(sentenceFor(filmedTwice({ clip: 'a', offsetUs: 0 }, []))).toContain('shows 0 reps of a set that has 5');
  });
});
