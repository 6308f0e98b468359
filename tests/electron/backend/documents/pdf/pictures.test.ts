import { createCanvas } from '@napi-rs/canvas';
import { describe, expect, it } from 'vitest';
import { documentToPdf } from '../../../../../electron/backend/documents/pdf/documentToPdf.ts';
import {
  renderDocument,
  renderReviewDocument,
} from '../../../../../electron/backend/documents/renderReviewDocument.ts';
import { type Paper, papers } from '../../../../../electron/contract/handover.ts';
import { type Block, type Picture, type RacksideDocument, text } from '../../../../../engine/document/document.ts';
import { editionOfReview } from '../../../../engine/edition/editionOfReview.ts';
import { draft, sessionOf } from '../../../../engine/letter/sample.ts';
import { elementsOf, openPdf, picturesOf, sizeOf, textOf } from './readPdf.ts';

function jpegOf(width: number, height: number): Uint8Array {
  const canvas = createCanvas(width, height);
  canvas.getContext('2d').fillRect(0, 0, width / 2, height);
  return canvas.toBuffer('image/jpeg');
}

const [wide, tall] = [jpegOf(160, 90), jpegOf(90, 160)];
const files = new Map([
  ['stills/wide.jpg', wide],
  ['stills/tall.jpg', tall],
]);

const documentOf = (...blocks: Block[]): RacksideDocument => ({
  title: 'Pictures',
  language: 'en',
  author: '',
  date: '2026-03-01',
  blocks,
});

const pictureOf = (id: string, name: 'wide' | 'tall', rest: Partial<Picture> = {}): Picture => ({
  kind: 'picture',
  id,
  source: `stills/${name}.jpg`,
  alt: `What ${id} shows`,
  caption: `Caption of ${id}`,
  ...rest,
});

const paragraph = (id: string, words = 'words '.repeat(30)): Block => ({
  kind: 'paragraph',
  id,
  inlines: [text(words)],
});
const pdfOf = async (document: RacksideDocument, paper: Paper = 'a4', pictures = files) =>
  openPdf(await documentToPdf(document, { paper, pictures }));

describe('the pictures of a PDF', () => {
  it('are there, in their own shape, tagged as figures with their alternative text (ISO 32000-1, 14.9.3)', async () => {
    const pdf = await pdfOf(documentOf(pictureOf('a', 'wide'), pictureOf('b', 'tall')));
    const [first, second] = await picturesOf(pdf);
    for (const [found, shape] of [
      [first, 160 / 90],
      [second, 90 / 160],
    ] as const) {
      const { left = 0, right = 0, top = 0, bottom = 0 } = found?.box ?? {};
      expect((right - left) / (top - bottom)).toBeCloseTo(shape, 3);
    }
    const figures = (await elementsOf(pdf)).filter(({ role }) => role === 'Figure');
    expect(figures.map(({ alt }) => alt)).toEqual(['What a shows', 'What b shows']);
    expect((await textOf(pdf)).map(({ words }) => words)).toContain('Caption of a');
  });

  it.each(papers)(
    'are never cut nor over one another, and keep their caption by them, on paper "%s"',
    async (paper) => {
      for (let before = 0; before < 18; before += 3) {
        const filler = Array.from({ length: before }, (_, index) => paragraph(`f${index}`));
        const row = Array.from({ length: 7 }, (_, index) => pictureOf(`p${index}`, index % 3 === 0 ? 'tall' : 'wide'));
        const beside = pictureOf('side', 'tall', { beside: ['s1', 's2'] });
        const pdf = await pdfOf(documentOf(...filler, ...row, beside, paragraph('s1'), paragraph('s2')), paper);
        const [width, height] = await sizeOf(pdf);
        const pictures = await picturesOf(pdf);
        expect(pictures).toHaveLength(8);
        const words = await textOf(pdf);
        for (const { page, box } of pictures) {
          // 20 mm at the sides, 18 mm at the top, the foot with the page's number below.
          expect(box.left).toBeGreaterThan(56);
          expect(box.right).toBeLessThan(width - 56);
          expect(box.top).toBeLessThan(height - 50);
          expect(box.bottom).toBeGreaterThan(60);
          const caption = words.find(
            (each) =>
              each.page === page &&
              each.words.startsWith('Caption of') &&
              Math.abs(each.box.left - box.left) < 1 &&
              each.box.bottom < box.bottom &&
              each.box.bottom > box.bottom - 20,
          );
          expect(caption).toBeDefined();
          const over = (other: typeof box) =>
            other.left < box.right - 0.1 &&
            other.right > box.left + 0.1 &&
            other.bottom < box.top - 0.1 &&
            other.top > box.bottom + 0.1;
          expect(words.filter((each) => each.page === page && over(each.box))).toEqual([]);
          expect(pictures.filter((each) => each.page === page && each.box !== box && over(each.box))).toEqual([]);
        }
      }
    },
  );

  it('are told in words where their file is missing or is no picture', async () => {
    for (const pictures of [new Map(), new Map([['stills/wide.jpg', new Uint8Array([1, 2, 3])]])]) {
      const pdf = await pdfOf(documentOf(pictureOf('a', 'wide')), 'a4', pictures);
      expect(await picturesOf(pdf)).toEqual([]);
      expect((await textOf(pdf)).map(({ words }) => words)).toContain('Caption of a (What a shows)');
    }
  });

  it('may be in the document itself', async () => {
    const source = `data:image/jpeg;base64,${Buffer.from(wide).toString('base64')}`;
    const pdf = await pdfOf(documentOf(pictureOf('a', 'wide', { source })), 'a4', new Map());
    expect(await picturesOf(pdf)).toHaveLength(1);
  });
});

describe('the pictures of an HTML page', () => {
  it('are within the one file where they are handed in', async () => {
    const document = documentOf(pictureOf('a', 'wide'), pictureOf('b', 'wide', { source: 'stills/elsewhere.jpg' }));
    const html = new TextDecoder().decode(await renderDocument(document, 'html', { pictures: files }));
    const [, inside = ''] = /src="data:image\/jpeg;base64,([^"]*)"/.exec(html) ?? [];
    expect(Buffer.from(inside, 'base64').equals(Buffer.from(wide))).toBe(true);
    expect(html).toContain('src="stills/elsewhere.jpg"');
  });
});

const short = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const, reps: [1, 2] };
const review = sessionOf([draft({ flags: [short] }), draft({ exercise: 'bench-press' })]);
const stills = new Map([['back-squat-0', { source: 'stills/tall.jpg', widthPx: 90, heightPx: 160 }]]);

describe('a letter with stills', () => {
  it.each(papers)('has the still on the page of its heading, on paper "%s"', async (paper) => {
    const asked = {
      edition: editionOfReview(review),
      document: 'letter',
      format: 'pdf',
      stills,
      pictures: files,
      paper,
    } as const;
    const pdf = await openPdf(await renderReviewDocument(asked));
    const [still, ...others] = await picturesOf(pdf);
    expect(others).toEqual([]);
    const heading = (await textOf(pdf)).find(({ words }) => words.startsWith('1. Short of depth'));
    expect(still?.page).toBe(heading?.page);
    expect((await elementsOf(pdf)).find(({ role }) => role === 'Figure')?.alt).toMatch(
      /^Still from the film: Back squat/,
    );
  });
});

// ISO 216 A4, 210 × 297 mm; ANSI/ASME Y14.1 letter, 8.5 × 11 in; 72 points to the inch.
const sizes = { a4: [595.28, 841.89], letter: [612, 792] } as const;

describe.each(papers)('paper "%s"', (paper) => {
  it('has its own size', async () => {
    const [width, height] = await sizeOf(await pdfOf(documentOf(), paper));
    expect([width, height]).toEqual(sizes[paper].map((points) => expect.closeTo(points, 1)));
  });

  // With the cautions of three lifts beside it, the shorter paper holds one exercise less.
  it('holds a breakdown of a few exercises on one page, with its bookmarks where the headings are', async () => {
    const lifts = ['back-squat', 'bench-press', ...(paper === 'a4' ? ['deadlift'] : [])];
    const few = lifts.map((exercise) => draft({ exercise, flags: [] }));
    const asked = { edition: editionOfReview(sessionOf(few)), document: 'breakdown', format: 'pdf', paper } as const;
    const pdf = await openPdf(await renderReviewDocument(asked));
    expect(pdf.numPages).toBe(1);
    const words = await textOf(pdf);
    for (const { title, dest } of await pdf.getOutline()) {
      const heading = words.find((each) => each.words.trim() === title);
      const top: unknown = Array.isArray(dest) ? dest[3] : null;
      expect(Math.abs(Number(top) - (heading?.box.top ?? 0))).toBeLessThan(8);
    }
  });
});
