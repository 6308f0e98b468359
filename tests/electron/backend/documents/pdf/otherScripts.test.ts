import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, it } from 'vitest';
import { documentToPdf } from '../../../../../electron/backend/documents/pdf/documentToPdf.ts';
import { renderReviewDocument } from '../../../../../electron/backend/documents/renderReviewDocument.ts';
import { type Block, emphasis, type RacksideDocument, strong, text } from '../../../../../engine/document/document.ts';
import type { Review } from '../../../../../engine/review/review.ts';
import { editionOfReview } from '../../../../engine/edition/editionOfReview.ts';
import { catalogue, draft, sessionOf } from '../../../../engine/letter/sample.ts';
import { openPdf, type Placed, sizeOf, textOf } from './readPdf.ts';

const arabic =
  'انزل ببطء ثم اصعد بسرعة (3 مرات)، ثم استرح قليلا قبل المجموعة التالية لأن التعب يغير الحركة كما رأينا في الفيديو.';
const hebrew =
  'ליאור קמחי, רד לאט (3 פעמים) ואז עלה מהר. הברך צריכה להישאר מעל כף הרגל לאורך כל התנועה, כמו בחזרה הראשונה.';
/** With a joiner's opposite (U+200C), Persian figures and Urdu letters; with vowel signs. */
const persian = 'می‌خواهم پایین‌تر بروم؛ زانوها ۱۲ سانتی‌متر بیرون. ٹھیک ہے ';
const vowelled = 'مُحَمَّدٌ يَرْفَعُ ١٢٠ كجم بِبُطْءٍ، אֲבָל שָׁלוֹם. ';
const japanese =
  '深さが足りない。もっと深く（しゃがむ）まで、ゆっくり。ウォームアップの後で、膝を外に押し出すことを忘れないでください。';
const korean = '천천히 앉았다가 빠르게 일어나세요.';
const chinese = '慢慢下蹲，膝盖向外。';

const documentOf = (...blocks: Block[]): RacksideDocument => ({
  ...{ title: 'Pages', language: 'en', author: '', date: '2026-03-01' },
  blocks,
});
const paragraph = (words: string): Block => ({ kind: 'paragraph', id: 'p', inlines: [text(words)] });
const pdfOf = (...blocks: Block[]): Promise<Uint8Array> => documentToPdf(documentOf(...blocks));

const margin = 56.7;

/** What stands on the first page between title and page number, line by line from the top, each from left to right. */
async function linesOf(bytes: Uint8Array): Promise<Placed[][]> {
  const placed = (await textOf(await openPdf(bytes))).filter(({ page, box }) => page === 1 && box.bottom > 70);
  const heights = [...new Set(placed.map(({ box }) => Math.round(box.bottom)))].sort((a, b) => b - a).slice(1);
  return heights.map((height) =>
    placed.filter(({ box }) => Math.round(box.bottom) === height).sort((one, other) => one.box.left - other.box.left),
  );
}

describe('words from right to left', () => {
  it.each([`${arabic} ${arabic}`, hebrew, persian.repeat(3)])(
    'stand at the right margin, no piece over another: %s',
    async (words) => {
      const bytes = await pdfOf(paragraph(words));
      const [width] = await sizeOf(await openPdf(bytes));
      const lines = await linesOf(bytes);
      expect(lines.length).toBeGreaterThan(1);
      for (const line of lines) {
        // Where the ink begins comes from measuring, where it ends from the widths in the file.
        expect(Math.abs((line.at(-1)?.box.right ?? 0) - (width - margin))).toBeLessThan(0.5);
        line.forEach(({ box }, place) => {
          expect(box.left).toBeGreaterThan((line[place - 1]?.box.right ?? margin) - 0.5);
        });
      }
    },
  );

  it('end there with their vowel signs too', async () => {
    const bytes = await pdfOf(paragraph(vowelled));
    const [width] = await sizeOf(await openPdf(bytes));
    const rights = (await linesOf(bytes)).flat().map(({ box }) => box.right);
    expect(Math.abs(Math.max(...rights) - (width - margin))).toBeLessThan(0.5);
  });

  it('within our own sentence leave it at the left, in its order', async () => {
    const [line = []] = await linesOf(await pdfOf(paragraph('Hello \u2068סלים נור\u2069, go on')));
    expect(line[0]?.box.left).toBeCloseTo(margin, 0);
    expect(line.map(({ words }) => words.trim())).toEqual(['Hello', 'סלים נור', ', go on']);
  });

  it('of one line have the first word at the right and figures as they are', async () => {
    const [line = []] = await linesOf(await pdfOf(paragraph('רד 12 פעם')));
    expect(line.map(({ words }) => words.trim())).toEqual(['פעם', '12', 'רד']);
  });

  // Unicode Standard Annex #9, table 4: classes AN and EN run from left to right.
  it.each(['١٢٠', '۱۲۳', '120'])('have figures of any kind as they are: %s', async (figures) => {
    const bytes = await pdfOf(paragraph(`رد ${figures} مرة`));
    const [line = []] = await linesOf(bytes);
    expect(line.map(({ words }) => words.trim())).toEqual(['مرة', figures, 'رد']);
  });

  it('keep Arabic letters joined: a word is narrower than its letters apart', async () => {
    const widthOf = async (words: string): Promise<number> => {
      const [line = []] = await linesOf(await pdfOf(paragraph(words)));
      return (line.at(-1)?.box.right ?? 0) - (line[0]?.box.left ?? 0);
    };
    const apart = await widthOf([...'سليم'].join('\u200C'));
    expect(await widthOf('سليم')).toBeLessThan(0.85 * apart);
  });
});

describe('Chinese and Japanese', () => {
  it('are broken between characters, and no line begins with what closes', async () => {
    const lines = await linesOf(await pdfOf(paragraph(japanese.repeat(3))));
    expect(lines.length).toBeGreaterThan(2);
    for (const line of lines) expect(line[0]?.words).not.toMatch(/^[。、）ゃっー]/);
    const full = lines.slice(0, -1).map((line) => line.at(-1)?.box.right ?? 0);
    for (const right of full) expect(right).toBeGreaterThan(595.28 - margin - 3 * 10.5);
  });
});

describe('signs that no font has', () => {
  // Unicode Standard Annex #15, compatibility decomposition.
  it('are set as the plain ones that they stand for', async () => {
    const [line = []] = await linesOf(await pdfOf(paragraph('ﬁne ｶﾞ ⑩ end')));
    expect(
      line
        .map(({ words }) => words)
        .join('')
        .replace(/\s+/g, ''),
    ).toBe('fineガ10end');
  });
});

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-scripts-'));
afterAll(() => rmSync(folder, { recursive: true }));

const hasPoppler = spawnSync('pdftotext', ['-v']).error === undefined;

function popplerOf(bytes: Uint8Array): { readonly words: string; readonly fonts: readonly string[] } {
  const file = path.join(folder, 'document.pdf');
  writeFileSync(file, bytes);
  // Poppler marks directions itself.
  const words = execFileSync('pdftotext', [file, '-'], { encoding: 'utf8' }).replace(/[\u202A-\u202E]/g, '');
  const fonts = execFileSync('pdffonts', [file], { encoding: 'utf8' }).trim().split('\n').slice(2);
  return { words: words.replace(/\s+/g, ' '), fonts };
}

/** Readers put spaces around figures and brackets in their own way. */
const unspaced = (words: string): string => words.replace(/\s/g, '');

describe.each([
  ['Arabic', arabic, 'Plex'],
  ['Hebrew', hebrew, 'NotoSansHebrew'],
  ['Japanese', japanese, 'NotoSansJP'],
  ['Korean', korean, 'NotoSansKR'],
  ['Chinese', chinese, 'NotoSansSC'],
])('text in %s', (_name, words, font) => {
  const both = async () =>
    pdfOf(paragraph(words), { kind: 'paragraph', id: 'q', inlines: [strong(words), text(' '), emphasis(words)] });

  it('is read out in the order it is read in', async () => {
    let read = '';
    for (const { words: piece } of await textOf(await openPdf(await both()))) read += piece;
    expect(unspaced(read)).toContain(unspaced(words));
    expect(read).not.toContain('\uFFFD');
  });

  it.runIf(hasPoppler)('is copied out by a second reader too, from fonts that are inside', async () => {
    const { words: read, fonts } = popplerOf(await both());
    expect(unspaced(read)).toContain(unspaced(words));
    expect(fonts.join('\n')).toContain(font);
    for (const line of fonts) expect(line).toMatch(/ yes +yes +yes +\d+ +\d+$/);
  });
});

const names = ['ליאור קמחי', 'سليم نور', '田中 ひかり', '김민수', '刘洋'] as const;
const note = `Slower (2 s): ${arabic} ${japanese} ${hebrew} Then 100 kg.`;

function namedSession(name: string): Review {
  const plain = sessionOf([
    draft({ flags: [{ criterion: 'depth', fault: 'shortOfDepth', severity: 'correct', reps: [1, 2], note }] }),
  ]);
  return { ...plain, coach: name, trainee: { ...plain.trainee, name } };
}

describe.each(names)('a session of %s', (name) => {
  it.each(['letter', 'sheet', 'breakdown'] as const)(
    'has a %s that says the name, all within the margins',
    async (kind) => {
      const review = namedSession(name);
      for (const language of ['en', 'de'] as const) {
        const request = {
          edition: editionOfReview(review, { ...catalogue, language }),
          document: kind,
          format: 'pdf',
        } as const;
        const pdf = await openPdf(await renderReviewDocument(request));
        const [width, height] = await sizeOf(pdf);
        const placed = await textOf(pdf);
        expect(unspaced(placed.map(({ words }) => words).join(''))).toContain(unspaced(name));
        for (const { words, box } of placed) {
          expect(words).not.toContain('\uFFFD');
          const inside = box.left > 56 && box.right < width - 56 && box.bottom > 20 && box.top < height - 45;
          expect(inside, `${kind}: ${words}`).toBe(true);
        }
      }
    },
  );
});

/** Scripts, directions, marks that steer, signs that no font has, and words that no line holds. */
const pieces = [
  ...[
    'abc ',
    'שלום',
    'عربي ',
    'لا',
    '(',
    ')',
    '[',
    '12',
    '٣٤',
    '。',
    '深',
    'ー',
    '김',
    'देव',
    'ไทย',
    '\u0640',
    '"',
    '»',
    ' ',
    '-',
    '.',
  ],
  ...[
    '\u200C',
    '\u200E',
    '\u200F',
    '\u2067',
    '\u2068',
    '\u2069',
    '\u202E',
    '\uFE0F',
    '\ud83c',
    'e\u0301',
    'אָ',
    'ﬁ',
    '⑩',
    '🏋️‍♀️',
  ],
  ...['w'.repeat(90), 'ش'.repeat(90), '深'.repeat(60)],
];

describe('any mixture of scripts', () => {
  it('stays within the margins, in paragraphs and cells', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(fc.constantFrom(...pieces), { maxLength: 40 }), async (mixture) => {
        const words = mixture.join('');
        const columns = [
          { label: 'A', align: 'start' },
          { label: 'B', align: 'end' },
        ] as const;
        const table: Block = {
          kind: 'table',
          id: 't',
          caption: words,
          columns,
          rows: [[[text(words)], [strong(words)]]],
        };
        const pdf = await openPdf(await pdfOf(paragraph(words), table));
        const [width] = await sizeOf(pdf);
        for (const { words: piece, box } of await textOf(pdf)) {
          expect(box.left > margin - 0.5 && box.right < width - margin + 0.5, piece).toBe(true);
        }
        await pdf.destroy();
      }),
      { numRuns: 30 },
    );
  });
});
