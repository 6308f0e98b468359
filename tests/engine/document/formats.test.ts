import { describe, expect, it } from 'vitest';
import { type RacksideDocument, text, toHtml, toMarkdown, toText } from '../../../engine/document/index.ts';
import { draft, letterOf, sessionOf } from '../letter/sample.ts';

const hostile = '<img src=x onerror=alert(1)> & "quotes" | `ticks` *stars* [link](javascript:x) # hash';

const document: RacksideDocument = {
  title: hostile,
  language: 'en',
  author: hostile,
  date: '2026-03-01',
  blocks: [
    { kind: 'heading', level: 2, id: 'one', text: hostile },
    { kind: 'paragraph', id: 'p', inlines: [text(hostile)] },
    { kind: 'list', id: 'l', ordered: false, items: [[text(hostile)]] },
    {
      kind: 'table',
      id: 't',
      caption: hostile,
      columns: [{ label: hostile, align: 'end' }],
      rows: [[[text(hostile)]]],
    },
    { kind: 'notice', id: 'n', title: hostile, paragraphs: [[text(hostile)]] },
  ],
};

describe('HTML', () => {
  it('escapes whatever people wrote', () => {
    const html = toHtml(document);
    expect(html).not.toContain('<img');
    expect(html).toContain('&lt;img src=x onerror=alert(1)&gt;');
  });

  it('is one page without scripts or anything fetched, with its language, title, one first heading and row and column heads', () => {
    const html = toHtml(letterOf(sessionOf([draft()])));
    expect(html).not.toMatch(/<script|<link|@import|url\(|https?:/i);
    expect(html).toMatch(/^<!doctype html>\s*<html lang="en"/i);
    expect(html.match(/<h1[\s>]/g)).toHaveLength(1);
    expect(html).toMatch(/<title>Letter to Alva Brook, 1 March 2026<\/title>/);
    expect(html).toMatch(/<th scope="col"/);
    expect(html).toMatch(/@media print/);
  });

  it('never skips a level of headings', () => {
    const levels = [...toHtml(letterOf(sessionOf([draft()]))).matchAll(/<h([1-6])[\s>]/g)].map(([, level]) =>
      Number(level),
    );
    for (const [index, level] of levels.entries()) expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
  });
});

describe('Markdown', () => {
  it('escapes what would become markup', () => {
    const markdown = toMarkdown(document);
    expect(markdown).not.toMatch(/(?<!\\)<img/);
    expect(markdown).toContain('\\*stars\\*');
    expect(markdown).toContain('\\[link\\]');
    // A bare bar would open a new cell of the table.
    for (const row of markdown.split('\n').filter((line) => line.startsWith('|'))) {
      expect(row.replaceAll('\\|', '').match(/\|/g)).toHaveLength(2);
    }
  });
});

describe('plain text', () => {
  it('is wrapped to 78 columns and keeps every word', () => {
    const letter = toText(
      letterOf(sessionOf([draft({ flags: [{ criterion: 'depth', weight: 'adjust', reps: [1] }] })])),
    );
    for (const line of letter.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
    expect(letter).toContain('Hello Alva,');
    expect(toText(document).replace(/\s+/g, ' ')).toContain(hostile);
  });
});
