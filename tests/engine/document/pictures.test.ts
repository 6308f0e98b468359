import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Block,
  type Picture,
  type RacksideDocument,
  type Table,
  text,
} from '../../../engine/document/document.ts';
import { groupBlocks, leadsOn } from '../../../engine/document/groupBlocks.ts';
import { toHtml } from '../../../engine/document/toHtml.ts';
import { toMarkdown } from '../../../engine/document/toMarkdown.ts';
import { toText } from '../../../engine/document/toText.ts';
import { tidy } from '../../../engine/document/words.ts';
import { htmlFaults } from './checkHtml.ts';

const documentOf = (...blocks: Block[]): RacksideDocument => ({
  title: 'Pictures',
  language: 'en',
  author: '',
  date: '2026-03-01',
  blocks,
});

const pictureOf = (rest: Partial<Picture> = {}): Picture => ({
  kind: 'picture',
  id: 'p',
  source: 'stills/squat 1.jpg',
  alt: 'The hip above the knee',
  caption: 'Rep 1',
  ...rest,
});

const paragraph = (id: string, words = id): Block => ({ kind: 'paragraph', id, inlines: [text(words)] });

describe('a picture', () => {
  it('has its alternative text, its caption and its sides in HTML', async () => {
    const html = toHtml(documentOf(pictureOf({ size: { widthPx: 720, heightPx: 1280 } })));
    expect(html).toContain(
      '<img src="stills/squat%201.jpg" alt="The hip above the knee" width="720" height="1280">\n<figcaption>Rep 1</figcaption>',
    );
    expect(await htmlFaults(html)).toEqual([]);
  });

  it('never names anything outside the folder', () => {
    for (const source of ['https://example.org/a.jpg', '//example.org/a', 'javascript:alert(1)', 'a?b#c.jpg']) {
      const [, address = ''] = /<img src="([^"]*)"/.exec(toHtml(documentOf(pictureOf({ source })))) ?? [];
      const found = new URL(address, 'file:///folder/letter.html');
      expect(found.protocol).toBe('file:');
      expect(found.host + found.search + found.hash).toBe('');
    }
  });

  it('is a link to its file in Markdown, the caption alone in plain text and where it has no file', () => {
    const linked = documentOf(pictureOf());
    expect(toMarkdown(linked)).toContain('![The hip above the knee](<stills/squat 1.jpg>)\n\n*Rep 1*');
    expect(toText(linked)).toBe('Pictures\n========\n\nRep 1\n');
    const inside = documentOf(pictureOf({ source: 'data:image/jpeg;base64,AAAA' }));
    expect(toMarkdown(inside)).toBe('# Pictures\n\n*Rep 1*\n');
    expect(toHtml(inside)).toContain('<img src="data:image/jpeg;base64,AAAA"');
  });
});

describe('what stands beside a picture', () => {
  it('is what it names, as long as that follows it', () => {
    const picture = pictureOf({ beside: ['a', 'b', 'gone'] });
    const groups = groupBlocks([picture, paragraph('a'), paragraph('b'), paragraph('c'), paragraph('a2')]);
    expect(groups.map((group) => (group.kind === 'beside' ? group.blocks.map(({ id }) => id) : group.kind))).toEqual([
      ['a', 'b'],
      'single',
      'single',
    ]);
  });

  it('is never lost nor moved, whatever follows whatever', () => {
    const block = fc.oneof(
      fc.constantFrom('a', 'b', 'c').map((id) => paragraph(id)),
      fc.constantFrom<Block>(pictureOf({ id: 'row' }), pictureOf({ id: 'beside', beside: ['a', 'b'] })),
      fc.constant<Block>({ kind: 'heading', level: 2, id: 'h', text: 'h' }),
    );
    fc.assert(
      fc.property(fc.array(block, { maxLength: 12 }), (blocks) => {
        const flat = groupBlocks(blocks).flatMap((group): readonly Block[] => {
          if (group.kind === 'single') return [group.block];
          return group.kind === 'row' ? group.pictures : [group.picture, ...group.blocks];
        });
        expect(flat).toEqual(blocks);
      }),
    );
  });
});

describe('what only leads on', () => {
  it('is a heading, and words that end in a colon', () => {
    expect(leadsOn({ kind: 'heading', level: 3, id: 'h', text: 'h' })).toBe(true);
    expect(leadsOn(paragraph('p', 'Three things:'))).toBe(true);
    expect(leadsOn(paragraph('p', 'At 0:02, done.'))).toBe(false);
  });
});

const chart: Table = {
  kind: 'table',
  id: 't',
  caption: 'Scores',
  columns: [
    { label: 'Criterion', align: 'start' },
    { label: 'Score', align: 'end' },
  ],
  rows: [
    [[text('Depth')], [text('62.5')]],
    [[text('Head')], [text('not looked at')]],
  ],
  bars: { column: 1, shares: [0.625, null] },
};

describe('a chart', () => {
  it('has bars as long as their shares that those who hear the page are spared', async () => {
    const html = toHtml(documentOf(chart));
    // Of 100 units, the width of the view box.
    expect(html.match(/<rect class="fill" width="[\d.]+"/g)).toEqual(['<rect class="fill" width="62.5"']);
    expect(html.match(/<svg /g)).toHaveLength(2);
    expect(html.match(/<svg [^>]*aria-hidden="true"/g)).toHaveLength(2);
    expect(html).toMatch(/<td data-label="Score" class="end bars"><svg.*<\/svg><span>62\.5<\/span><\/td>/);
    expect(await htmlFaults(html)).toEqual([]);
  });

  it('is a table in Markdown and in plain text', () => {
    expect(toMarkdown(documentOf(chart))).toContain('| Depth | 62.5 |');
    expect(toText(documentOf(chart))).toMatch(/Depth +62\.5/);
  });
});

describe('words from right to left', () => {
  it('are isolated by an element of their own (HTML Standard, bdi), in order', async () => {
    const html = toHtml(documentOf(paragraph('p', `Your note “${tidy('اخفض ببطء')}”, 3 times.`)));
    expect(html).toContain('Your note “<bdi>اخفض ببطء</bdi>”, 3 times.');
    expect(html).not.toMatch(/[\u2068\u2069]/);
    expect(await htmlFaults(html)).toEqual([]);
  });
});
