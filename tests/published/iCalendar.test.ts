import fc from 'fast-check';
import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { editionOf, type FilmingDay } from '../../engine/edition/edition.ts';
import type { Language } from '../../engine/language/language.ts';
import type { Review } from '../../engine/review/review.ts';
import { catalogue, draft, sessionOf, sessions } from '../engine/letter/sample.ts';
import { hostileWords } from '../engine/sheet/hostileWords.ts';

const when: FilmingDay = { date: '2026-03-08', stamp: '2026-03-01T17:05:00.250Z' };
const squat = sessionOf([draft()]);

const filmingDate = (review: Review, day: FilmingDay, language: Language = 'en'): string =>
  editionOf({ review, catalogue, style: { length: 'full', tone: 'plain', language }, names: 'full' }).filmingDate(day);

function eventOf(file: string): { event: ICAL.Event; calendar: ICAL.Component } {
  const calendar = new ICAL.Component(ICAL.parse(file));
  const event = calendar.getFirstSubcomponent('vevent');
  if (event === null) throw new Error('no event');
  return { event: new ICAL.Event(event), calendar };
}

/** RFC 5545, section 3.1: lines end with CR LF, and hold at most 75 octets without it. */
function expectLines(file: string): void {
  expect(file.endsWith('\r\n')).toBe(true);
  const lines = file.slice(0, -2).split('\r\n');
  for (const line of lines) {
    expect(line).not.toMatch(/[\r\n]/);
    expect(Buffer.byteLength(line, 'utf8')).toBeLessThanOrEqual(75);
    // No character is parted: each line is text by itself.
    expect(line.isWellFormed()).toBe(true);
    expect(line).not.toMatch(/[^\P{Cc}\t]/u);
  }
}

describe('the next filming date as a calendar file (RFC 5545, read by another library)', () => {
  const { event, calendar } = eventOf(filmingDate(squat, when));

  it('is one calendar of version 2.0 with one event (3.6, 3.7.3, 3.7.4)', () => {
    expect(calendar.name).toBe('vcalendar');
    expect(calendar.getFirstPropertyValue('version')).toBe('2.0');
    expect(calendar.getFirstPropertyValue('prodid')).toMatch(/Rackside/);
    expect(calendar.getAllSubcomponents()).toHaveLength(1);
  });

  it('lasts the whole of its day, and blocks nothing (3.6.1, 3.8.2.7)', () => {
    expect(event.startDate.isDate).toBe(true);
    expect(event.startDate.toString()).toBe('2026-03-08');
    expect(event.endDate.toString()).toBe('2026-03-09');
    expect(event.component.getFirstPropertyValue('transp')).toBe('TRANSPARENT');
  });

  it('says when it was made, in UTC (3.8.7.2)', () => {
    expect(event.component.getFirstPropertyValue('dtstamp')?.toString()).toBe('2026-03-01T17:05:00Z');
  });

  it('is the same event in a calendar when it is sent again for another day (3.8.4.7, 3.8.7.4)', () => {
    const later = eventOf(filmingDate(squat, { date: '2026-03-15', stamp: '2026-03-05T08:00:00Z', sequence: 1 }));
    expect(later.event.uid).toBe(event.uid);
    expect([event.sequence, later.event.sequence]).toEqual([0, 1]);
    const other = sessionOf([draft()], { session: { ...squat.session, id: 'another' } });
    expect(eventOf(filmingDate(other, when)).event.uid).not.toBe(event.uid);
  });

  it('tells two trainees apart in files that were written without an id of their own', () => {
    const unnamed = { ...squat, session: { ...squat.session, id: 'session' } };
    const other = { ...unnamed, trainee: { ...unnamed.trainee, name: 'Mira Löwe' } };
    const uids = [unnamed, other].map((review) => eventOf(filmingDate(review, when)).event.uid);
    expect(new Set(uids).size).toBe(2);
  });

  it('has no reminder unless asked for; then so long before the day begins (3.6.6)', () => {
    expect(event.component.getAllSubcomponents('valarm')).toEqual([]);
    const reminded = eventOf(filmingDate(squat, { ...when, reminderHours: 6 })).event;
    const [alarm, ...more] = reminded.component.getAllSubcomponents('valarm');
    expect(more).toEqual([]);
    expect(alarm?.getFirstPropertyValue('action')).toBe('DISPLAY');
    expect(alarm?.getFirstPropertyValue('description')).toBe(reminded.summary);
    expect(alarm?.getFirstPropertyValue('trigger')?.toString()).toBe('-PT6H');
  });

  it('tells what to film and how, in the language of the letter', () => {
    expect(event.summary).toBe('Filming day: Back squat');
    expect(event.description).toContain('- Stand the phone still.');
    expect(event.description).toContain('Back squat. Film from the side');
    const german = eventOf(filmingDate(squat, when, 'de')).event;
    expect(german.summary).toBe('Filmtag: Kniebeuge');
    expect(german.description).toContain('- Stell das Handy fest hin.');
    expect(german.component.getFirstProperty('description')?.getParameter('language')).toBe('de');
  });

  it('keeps its form and all of its words for any session', () => {
    fc.assert(
      fc.property(sessions, fc.constantFrom('en' as const, 'de' as const), (review, language) => {
        const file = filmingDate(review, { ...when, reminderHours: 24 }, language);
        expectLines(file);
        const { description } = eventOf(file).event;
        expect(description).toMatch(/Sixty frames|Sechzig Bilder/);
        expect(description).toMatch(/not medical advice\.$|kein medizinischer Rat\.$/);
      }),
      { numRuns: 40 },
    );
  });

  it('gives any words back (3.3.11)', () => {
    fc.assert(
      fc.property(hostileWords, (note) => {
        const painNote = `Knee 3/10 ${note}`;
        const file = filmingDate({ ...squat, session: { ...squat.session, painNote } }, when);
        expectLines(file);
        const plain = (words: string) =>
          words.toWellFormed().replace(/[\s\p{Cc}\uFEFF\u2028\u2029\u202A-\u202E\u2066-\u2069\u200E\u200F]/gu, '');
        expect(plain(eventOf(file).event.description)).toContain(plain(painNote));
      }),
      { numRuns: 120 },
    );
  });

  it.each(['2026-02-30', '2026-13-01', 'tomorrow', '20260308'])('takes no %s for a date', (date) => {
    expect(() => filmingDate(squat, { ...when, date })).toThrow(RangeError);
  });

  it('takes no words for a time', () => {
    expect(() => filmingDate(squat, { ...when, stamp: 'now' })).toThrow(RangeError);
  });
});
