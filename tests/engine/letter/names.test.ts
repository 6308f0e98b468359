import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import type { Review } from '../../../engine/review/review.ts';
import { draft, letterOf, linesOf, sessionOf } from './sample.ts';

const named = (name: string, change: Partial<Review> = {}): Review => {
  const review = sessionOf([draft({ flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] })], change);
  return { ...review, trainee: { ...review.trainee, name } };
};

const greetingOf = (name: string): string | undefined => linesOf(letterOf(named(name)))[0];

/** Unicode bidirectional algorithm (UAX 9): an FSI that no PDI closes turns round the rest of its paragraph. */
const isolatesLeftOpen = (line: string): number => line.split('\u2068').length - line.split('\u2069').length;

describe('the name in a letter', () => {
  it.each([
    ['Robin Thale', 'Hello Robin,'],
    ['  Robin   Thale ', 'Hello Robin,'],
    ['Robin', 'Hello Robin,'],
    ['Anna-Lena Ek', 'Hello Anna-Lena,'],
    ["D'Arcy Moss", "Hello D'Arcy,"],
    ['José 🏋️', 'Hello José,'],
    ['🏋️ Max', 'Hello 🏋️,'],
  ])('%j is greeted by its first word', (name, greeting) => {
    expect(greetingOf(name)).toBe(greeting);
  });

  it('closes every isolate that it opens round words from right to left', () => {
    expect(greetingOf('سلام علي')).toBe('Hello \u2068سلام\u2069,');
    expect(greetingOf('Robin סלע')).toBe('Hello Robin,');
    for (const name of ['سلام علي', 'Robin סלע', 'סלע Robin', '\u202eRobin']) {
      for (const line of linesOf(letterOf(named(name)))) expect(isolatesLeftOpen(line)).toBe(0);
    }
  });

  it('stays words whatever it is, in every text format', () => {
    const name = '<img src=x onerror=alert(1)>"\'& Moss';
    const html = toHtml(letterOf(named(name, { voice: 'self' })));
    expect(html).not.toContain('<img');
    expect(html).toContain('<meta name="author" content="&lt;img src=x onerror=alert(1)&gt;&quot;&#39;&amp; Moss">');
    expect(toMarkdown(letterOf(named('[Robin](javascript:alert) <b>')))).toMatch(
      /^# Letter to \\\[Robin\\\]\(javascript:alert\) \\<b\\>/,
    );
    expect(toText(letterOf(named('{trainee} {date}')))).toContain('Letter to {trainee} {date}, 1 March 2026');
  });

  it('never breaks the page, whatever people type', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }), (name) => {
        const html = toHtml(letterOf(named(name)));
        expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
        expect(html.isWellFormed()).toBe(true);
        expect(html.match(/<h1>/g)).toHaveLength(1);
        expect(html.replace(/<title>.*<\/title>/s, '').match(/<\/?(img|script|iframe|svg|a)\b/i)).toBeNull();
      }),
      { numRuns: 100 },
    );
  });
});
