import { describe, expect, it } from 'vitest';
import { type RacksideDocument, text } from '../../../engine/document/document.ts';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { directionOf, hasRightToLeft } from '../../../engine/document/words.ts';

// Unicode Standard Annex #9, rules P2 and P3, and definition BD8 for what is isolated.
describe('which way a paragraph is read', () => {
  it.each([
    ['depth', 'ltr'],
    ['120 kg', 'ltr'],
    ['120', 'ltr'],
    ['', 'ltr'],
    ['עומק', 'rtl'],
    ['2 × عمق and more', 'rtl'],
    ['深さ עומק', 'ltr'],
    ['\u200F120 kg', 'rtl'],
    ['Letter to \u2068סלים\u2069', 'ltr'],
    ['\u2068סלים\u2069: slower', 'ltr'],
    ['\u2068Alva\u2069 — עומק', 'rtl'],
  ])('%j is read %s', (words, expected) => {
    expect(directionOf(words)).toBe(expected);
  });

  it('is that of the isolated words where there are no others', () => {
    expect(directionOf('\u2068انزل ببطء\u2069.')).toBe('rtl');
    expect(directionOf('3. \u2068Lower\u2069')).toBe('ltr');
  });

  it('tells whether anything is read from right to left', () => {
    expect(hasRightToLeft('Back squat 120 kg')).toBe(false);
    expect(hasRightToLeft('Back squat of ליאור')).toBe(true);
  });
});

describe('a page of HTML', () => {
  const document: RacksideDocument = {
    ...{ title: 'Letter to \u2068סלים\u2069', language: 'en', author: '', date: '2026-03-01' },
    blocks: [
      { kind: 'paragraph', id: 'own', inlines: [text('\u2068רד לאט\u2069.')] },
      { kind: 'paragraph', id: 'mixed', inlines: [text('Cue: \u2068רד לאט\u2069.')] },
      { kind: 'list', id: 'list', ordered: false, items: [[text('صعود')], [text('up')]] },
      {
        ...{ kind: 'table', id: 'table', caption: 'Remarks', columns: [{ label: 'Note', align: 'start' }] },
        rows: [[[text('\u2068רד\u2069')]], [[text('Slow')]]],
      },
    ],
  };
  const html = toHtml(document);

  it("turns round what is a person's own words, and nothing of ours", () => {
    expect(html).toContain('<p id="own" dir="rtl"><bdi>רד לאט</bdi>.</p>');
    expect(html).toContain('<p id="mixed">Cue: <bdi>רד לאט</bdi>.</p>');
    expect(html).toContain('<li dir="rtl">صعود</li>\n<li>up</li>');
    expect(html).toContain('<th scope="row" dir="rtl"><bdi>רד</bdi></th>');
    expect(html).toContain('<th scope="row">Slow</th>');
    expect(html).toContain('<h1>Letter to <bdi>סלים</bdi></h1>');
  });
});
