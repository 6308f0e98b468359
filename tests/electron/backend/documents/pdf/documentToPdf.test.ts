import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { renderReviewDocument } from '../../../../../electron/backend/documents/renderReviewDocument.ts';
import type { Review } from '../../../../../engine/review/review.ts';
import { editionOfReview } from '../../../../engine/edition/editionOfReview.ts';
import { draft, sessionOf } from '../../../../engine/letter/sample.ts';

const pdfOf = (review: Review, document: 'letter' | 'sheet' = 'letter'): Promise<Uint8Array> =>
  renderReviewDocument({ edition: editionOfReview(review), document, format: 'pdf' });

const open = (bytes: Uint8Array): Promise<PDFDocumentProxy> => getDocument({ data: bytes.slice() }).promise;

async function textOf(pdf: PDFDocumentProxy): Promise<string> {
  let text = '';
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const { items } = await (await pdf.getPage(number)).getTextContent();
    text += `${items.map((item) => ('str' in item ? item.str : '')).join(' ')}\n`;
  }
  return text.replace(/\s+/g, ' ');
}

const short = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const, reps: [1, 2, 3] };

describe('the letter as PDF, opened with another library', () => {
  it('has its title, language, bookmarks, tags and the text in reading order', async () => {
    const pdf = await open(await pdfOf(sessionOf([draft({ flags: [short] })])));
    const { info } = await pdf.getMetadata();
    expect(info).toMatchObject({ Title: 'Letter to Alva Brook, 1 March 2026', Author: 'Jo Harwick', Language: 'en' });
    expect((await pdf.getOutline()).map(({ title }) => title)).toEqual(
      expect.arrayContaining(['What to keep', 'What to change', 'Cautions']),
    );
    expect(await pdf.getMarkInfo()).toMatchObject({ Marked: true });
    expect(await (await pdf.getPage(1)).getStructTree()).not.toBeNull();
    const text = await textOf(pdf);
    const places = ['Hello Alva', 'Overall grade', 'What to keep', 'What to change', 'Your cue', 'Cautions'].map(
      (words) => text.indexOf(words),
    );
    expect(places).not.toContain(-1);
    expect([...places].sort((a, b) => a - b)).toEqual(places);
    expect(text).toContain(`1 / ${pdf.numPages}`);
  });

  it('carries its fonts with it', async () => {
    const bytes = Buffer.from(await pdfOf(sessionOf([draft()]))).toString('latin1');
    expect(bytes).toMatch(/\/FontFile[23]?\b/);
    expect(bytes).not.toMatch(/\/BaseFont \/(Helvetica|Times|Courier)/);
  });

  it('is the same, byte for byte, for the same review', async () => {
    const review = sessionOf([draft({ flags: [short] })]);
    const [first, second] = [await pdfOf(review), await pdfOf(structuredClone(review))];
    expect(Buffer.from(first).equals(Buffer.from(second))).toBe(true);
  });

  it.each([
    ['no entries', sessionOf([])],
    ['no flags', sessionOf([draft()])],
    ['a long note', sessionOf([draft({ flags: [{ ...short, note: 'wide '.repeat(60) }] })])],
    ['one unbroken word', sessionOf([draft({ flags: [{ ...short, note: 'w'.repeat(300) }] })])],
    ['letters of other scripts', sessionOf([draft({ flags: [{ ...short, note: 'سلام 深さ 🏋️ Größe' }] })])],
    ['500 flags', sessionOf([draft({ flags: Array.from({ length: 500 }, () => short) })])],
  ])('stands up to %s', async (_name, review) => {
    for (const document of ['letter', 'sheet'] as const) {
      const pdf = await open(await pdfOf(review, document));
      expect(pdf.numPages).toBeGreaterThan(0);
      expect(await textOf(pdf)).toContain('Alva Brook');
    }
  });
});

describe('what makes no sense', () => {
  it.each(['csv', 'vtt'] as const)('a letter as %s is refused with a sentence', async (format) => {
    const asked = renderReviewDocument({ edition: editionOfReview(sessionOf([draft()])), document: 'letter', format });
    await expect(asked).rejects.toMatchObject({ problem: { code: 'bad-request' } });
  });
});
