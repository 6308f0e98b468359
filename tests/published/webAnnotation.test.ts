import { Ajv } from 'ajv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { annotationJson, annotationPage } from '../../engine/annotation/annotationPage.ts';
import { translated } from '../../engine/exercises/catalogue.ts';
import { catalogue, draft, sessionOf, sessions } from '../engine/letter/sample.ts';
import { hostileWords, sessionWithNotes } from '../engine/sheet/hostileWords.ts';

// W3C Web Annotation Data Model, Recommendation of 23 February 2017: what it says must be, and should be where said.
const address = { type: 'string', pattern: '^\\S+$' };
const iri = { type: 'string', pattern: '^[A-Za-z][A-Za-z0-9+.-]*:[^\\s<>"{}|\\\\^`]+$' };

/** Sections 3.2.1 and 3.2.4: a textual body has its text in one `value`; format and language are one each, and should be there. */
const body = {
  type: 'object',
  required: ['type', 'value', 'format', 'language'],
  properties: {
    type: { const: 'TextualBody' },
    value: { type: 'string' },
    format: { const: 'text/plain' },
    language: { type: 'string', pattern: '^[a-z]{2}$' },
    textDirection: { enum: ['ltr', 'rtl', 'auto'] },
    // Section 3.3.5: the motivations that the model names.
    purpose: { enum: ['assessing', 'classifying', 'commenting', 'describing', 'tagging'] },
  },
};

/** Section 4: a specific resource has exactly one source; 4.2.1: a fragment selector has one value and should say what it conforms to. */
const target = {
  type: 'object',
  required: ['source'],
  properties: {
    type: { const: 'SpecificResource' },
    source: address,
    selector: {
      type: 'object',
      required: ['type', 'value', 'conformsTo'],
      properties: {
        type: { const: 'FragmentSelector' },
        value: { type: 'string', pattern: '^t=' },
        conformsTo: { const: 'http://www.w3.org/TR/media-frags/' },
      },
    },
  },
};

/** Section 3.1: one id that is an IRI, the type, one target or more, and should have a body. */
const annotation = {
  type: 'object',
  required: ['id', 'type', 'target', 'body', 'motivation'],
  properties: {
    id: iri,
    type: { const: 'Annotation' },
    motivation: { enum: ['assessing', 'commenting'] },
    // Section 3.3.2: a creator should have a name; section 3.3.1: times are in UTC.
    creator: {
      type: 'object',
      required: ['name'],
      properties: { type: { const: 'Person' }, name: { type: 'string' } },
    },
    created: { type: 'string', pattern: '^\\d{4}-\\d{2}-\\d{2}T[0-9:.]+Z$' },
    body: { type: 'array', minItems: 1, items: body },
    target,
  },
};

/** Section 5.2: context, one id, the type, items; should say what it is part of and where it begins. */
const page = {
  type: 'object',
  required: ['@context', 'id', 'type', 'items', 'partOf', 'startIndex'],
  properties: {
    '@context': { const: 'http://www.w3.org/ns/anno.jsonld' },
    id: iri,
    type: { const: 'AnnotationPage' },
    startIndex: { type: 'integer', minimum: 0 },
    // Section 5.1: a collection has one id and should have a label and a total.
    partOf: {
      type: 'object',
      required: ['id', 'label', 'total'],
      properties: {
        id: iri,
        type: { const: 'AnnotationCollection' },
        label: { type: 'string' },
        total: { type: 'integer', minimum: 0 },
      },
    },
    items: { type: 'array', items: annotation },
  },
};

const validate = new Ajv({ strict: true }).compile(page);

describe('the flags as Web Annotations', () => {
  it('hold what the model asks for, for any session', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        const read = JSON.parse(annotationJson(review, catalogue, { created: '2026-03-02T10:00:00Z' }));
        expect(validate(read), JSON.stringify(validate.errors)).toBe(true);
        const flags = review.entries.flatMap((entry) => entry.flags);
        expect(read.items).toHaveLength(flags.length);
        expect(read.partOf.total).toBe(flags.length);
        const ids = read.items.map(({ id }: { id: string }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
      { numRuns: 80 },
    );
  });

  it('give any words back as they were written', () => {
    fc.assert(
      fc.property(hostileWords, (note) => {
        const { items } = annotationPage(sessionWithNotes([note]), catalogue);
        const values = JSON.parse(JSON.stringify(items))[0].body.map(({ value }: { value: string }) => value);
        if (note.trim() !== '') expect(values).toContain(note.toWellFormed());
      }),
      { numRuns: 100 },
    );
  });

  it('target a stretch that is a media fragment within the clip, from the flag’s moment on, also in its last seconds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 29_999_999 }), (us) => {
        const entry = draft({ flags: [{ criterion: 'depth', severity: 'keep', reps: [1] }] });
        const review = sessionOf([
          { ...entry, flags: entry.flags.map((flag) => ({ ...flag, at: { seconds: us / 1e6 } })) },
        ]);
        const [item] = annotationPage(review, catalogue).items;
        const value = item?.target.selector?.value ?? '';
        // W3C Media Fragments URI 1.0, 4.2.1: both ends in seconds of normal play time.
        const [, start, end] = /^t=(\d+(?:\.\d+)?),(\d+(?:\.\d+)?)$/.exec(value) ?? [];
        expect(Math.round(Number(start) * 1e6)).toBe(us);
        expect(Number(end)).toBeLessThanOrEqual(30);
        expect(Number(end)).toBeGreaterThan(Number(start));
      }),
    );
  });

  it.each([
    { startUs: undefined, atS: 28.6, value: 't=28.6,30' },
    { startUs: undefined, atS: 30, value: 't=28,30' },
    // A clip of 30 s whose first frame appears at 2 s ends at 32 s; seconds of a review count from that frame.
    { startUs: 2_000_000, atS: 27, value: 't=29,31' },
    { startUs: 2_000_000, atS: 29.5, value: 't=31.5,32' },
  ])('target $value for a flag at $atS s of a clip of 30 s', ({ startUs, atS, value }) => {
    const entry = draft({ flags: [{ criterion: 'depth', severity: 'keep', reps: [1] }] });
    const clips = entry.clips.map((clip) => ({
      ...clip,
      ...(clip.facts && startUs !== undefined && { facts: { ...clip.facts, startUs } }),
    }));
    const flags = entry.flags.map((flag) => ({ ...flag, at: { seconds: atS } }));
    const [item] = annotationPage(sessionOf([{ ...entry, clips, flags }]), catalogue).items;
    expect(item?.target.selector?.value).toBe(value);
  });

  it('name the clip’s file as an address that lies beside the page, whatever its name', () => {
    const review = sessionWithNotes(['']);
    const files = new Map([['back-squat-clip', 'clips/Kniebeuge 1 #2?.mp4']]);
    const [item] = annotationPage(review, catalogue, { files }).items;
    expect(item?.target.source).toBe('clips/Kniebeuge%201%20%232%3F.mp4');
    expect(decodeURIComponent(item?.target.source ?? '')).toBe('clips/Kniebeuge 1 #2?.mp4');
  });

  it('target the whole file where the flag’s time is not known', () => {
    const review = sessionWithNotes(['']);
    const blind = {
      ...review,
      entries: review.entries.map((entry) => ({
        ...entry,
        clips: entry.clips.map(({ facts: _facts, ...clip }) => clip),
      })),
    };
    const [item] = annotationPage(blind, catalogue).items;
    expect(item?.target).not.toHaveProperty('selector');
    expect(item?.target.source).toBe('Back%20squat%2C%20set%201');
  });

  it('speak the letter’s language, and say which it is', () => {
    const german = translated(catalogue, 'de');
    const [item] = annotationPage(sessionWithNotes(['Langsamer.']), german).items;
    expect(new Set(item?.body.map(({ language }) => language))).toEqual(new Set(['de']));
    expect(item?.body.map(({ value }) => value)).toEqual(['Langsamer.', 'Tiefe', 'anpassen ||', 'Wiederholung 1']);
  });

  it('name the coach, or in a review of one’s own the trainee; the same ids each time', () => {
    const review = sessionWithNotes(['', '']);
    const [first] = annotationPage(review, catalogue).items;
    const [own] = annotationPage({ ...review, voice: 'self' }, catalogue).items;
    expect([first?.creator?.name, own?.creator?.name]).toEqual(['Jo Harwick', 'Alva Brook']);
    expect(own?.id).toBe(first?.id);
  });
});
