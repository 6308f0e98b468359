import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type RacksideDocument, text } from '../../../engine/document/document.ts';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { writeSheet } from '../../../engine/sheet/writeSheet.ts';
import { catalogue, draft, letterOf, sessionOf, sessions } from '../letter/sample.ts';
import { htmlFaults } from './checkHtml.ts';

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
});

const short = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const, reps: [1, 2] };

describe('tables of a page', () => {
  const html = toHtml(letterOf(sessionOf([draft({ flags: [short] })])));

  it('have a caption and heads that say what they head (WCAG 2.2, technique H63)', () => {
    expect(html).toContain('<th scope="col">Sets × reps × load</th>');
    expect(html).toContain('<th scope="row">Back squat</th>');
    expect(html.match(/<caption/g)).toHaveLength(html.match(/<table/g)?.length ?? 0);
  });

  it('can be scrolled by the keyboard where they are wider than the screen (WCAG 2.2, success criterion 2.1.1)', () => {
    const [, label = ''] = /<div class="table" role="group" aria-labelledby="([^"]+)" tabindex="0">/.exec(html) ?? [];
    expect(html).toContain(`<caption id="${label}">`);
  });

  it('cut words only where one is too long for its page', () => {
    const cell = (words: string): string => {
      const table = { kind: 'table' as const, id: 't', caption: 'c', columns: [{ label: 'l', align: 'end' as const }] };
      const page = toHtml({ ...document, blocks: [{ ...table, rows: [[[text(words)]]] }] });
      return /<th scope="row"[^>]*>/.exec(page)?.[0] ?? '';
    };
    expect(cell('adjust\u00A0||')).toContain(' class="end">');
    expect(cell(`a ${'w'.repeat(300)}`)).toContain(' class="end long">');
  });

  it('carry in each cell the label that a card shows, and nothing in a cell that says nothing', () => {
    const table = {
      ...{ kind: 'table' as const, id: 't', caption: 'c' },
      columns: [
        { label: 'Rep', align: 'end' as const },
        { label: 'Cue', align: 'start' as const },
        { label: 'Still', align: 'start' as const },
      ],
      rows: [[[text('1')], [text('Push')], []]],
    };
    expect(toHtml({ ...document, blocks: [table] })).toContain(
      '<tr><th scope="row" data-label="Rep" class="end">1</th><td data-label="Cue"><span>Push</span></td><td data-label="Still"></td></tr>',
    );
  });
});

/** Elements that HTML leaves open (HTML Standard, void elements). */
const voids = ['meta', 'img'];

/** Reads tags one after the other; throws where one closes that was not the last opened. */
function unclosed(html: string): string[] {
  const open: string[] = [];
  for (const [, slash, name = ''] of html
    .replace(/<style>.*<\/style>/s, '')
    .matchAll(/<(\/?)([a-z][a-z0-9]*)[^>]*>/g)) {
    if (slash === '') {
      if (!voids.includes(name)) open.push(name);
    } else if (open.pop() !== name) throw new Error(`</${name}> closes something else`);
  }
  return open;
}

describe('the page of any session', () => {
  it('closes what it opens, in order, and gives each place an id of its own', () => {
    fc.assert(
      fc.property(sessions, (review) => {
        for (const page of [letterOf(review), writeSheet(review, gradeSession(review, catalogue), catalogue)]) {
          const html = toHtml(page);
          expect(unclosed(html)).toEqual([]);
          const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
          expect(new Set(ids).size).toBe(ids.length);
          for (const [, label] of html.matchAll(/aria-labelledby="([^"]*)"/g)) expect(ids).toContain(label);
          const levels = [...html.matchAll(/<h([1-6])[\s>]/g)].map(([, level]) => Number(level));
          expect(levels.filter((level) => level === 1)).toHaveLength(1);
          expect(levels.every((level, index) => level - (levels[index - 1] ?? 0) <= 1)).toBe(true);
        }
      }),
      { numRuns: 60 },
    );
  });
});

describe('letter and sheet of any session', () => {
  it('are sound for an HTML checker', async () => {
    await fc.assert(
      fc.asyncProperty(sessions, async (review) => {
        for (const page of [letterOf(review), writeSheet(review, gradeSession(review, catalogue), catalogue)]) {
          expect(await htmlFaults(toHtml(page))).toEqual([]);
        }
      }),
      { numRuns: 25 },
    );
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

// GFM 6.9, extended email autolinks: looked for in the words after escapes are taken back.
const autolink = /[A-Za-z0-9._+-]+@[A-Za-z0-9_-]+(?:\.[A-Za-z0-9_-]+)+/;
const read = (markdown: string): string => markdown.replace(/\\([!-/:-@[-`{-~])/g, '$1');

describe('addresses of mail in Markdown', () => {
  const paragraph = (words: string): RacksideDocument => ({
    ...document,
    title: 'Letter',
    blocks: [{ kind: 'paragraph', id: 'p', inlines: [text(words)] }],
  });

  it.each(['mira@example.org', 'Write to jo.h+lift@mail.example.co.uk.', 'mailto:a_b-c@example.org', 'x@y-z.example'])(
    'do not become links by themselves: %s',
    (words) => {
      const markdown = read(toMarkdown(paragraph(words)));
      expect(words).toMatch(autolink);
      expect(markdown).not.toMatch(autolink);
      expect(markdown.replaceAll('\u2060', '')).toContain(words);
    },
  );

  it('leave a lone at sign as it was written', () => {
    expect(toMarkdown(paragraph('3 sets @ 80 kg, @home'))).toContain('3 sets @ 80 kg, @home');
  });
});

describe('plain text', () => {
  it('is wrapped to 78 columns and keeps every word', () => {
    const letter = toText(
      letterOf(sessionOf([draft({ flags: [{ criterion: 'depth', severity: 'adjust', reps: [1] }] })])),
    );
    for (const line of letter.split('\n')) expect(line.length).toBeLessThanOrEqual(78);
    expect(letter).toContain('Hello Alva,');
    expect(toText(document).replace(/\s+/g, ' ')).toContain(hostile);
  });
});
