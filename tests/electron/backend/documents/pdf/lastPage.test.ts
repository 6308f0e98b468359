import { describe, expect, it } from 'vitest';
import { documentToPdf } from '../../../../../electron/backend/documents/pdf/documentToPdf.ts';
import { type Block, type RacksideDocument, text } from '../../../../../engine/document/document.ts';
import { translated } from '../../../../../engine/exercises/catalogue.ts';
import { editionOfReview } from '../../../../engine/edition/editionOfReview.ts';
import { examples } from '../../../../engine/letter/examples/sessions.ts';
import { catalogue } from '../../../../engine/letter/sample.ts';
import { openPdf, textOf } from './readPdf.ts';

/** Lines on the last page, the page's number aside: places of text at heights of their own. */
async function lastPage(document: RacksideDocument, paper: 'a4' | 'letter' = 'a4') {
  const pdf = await openPdf(await documentToPdf(document, { paper }));
  const number = `${pdf.numPages} / ${pdf.numPages}`;
  const texts = (await textOf(pdf)).filter(({ page }) => page === pdf.numPages);
  const foot = texts.find(({ words }) => words === number)?.box.bottom ?? Number.NaN;
  const heights = texts.map(({ box }) => Math.round(box.bottom)).filter((bottom) => bottom > foot + 4);
  return { pages: pdf.numPages, lines: new Set(heights).size };
}

const isWell = ({ pages, lines }: { readonly pages: number; readonly lines: number }): boolean =>
  pages === 1 || lines >= 4;

describe('the last page of a PDF', () => {
  it.each(['en', 'de'] as const)('holds more than a few lines of a letter, in %s', async (language) => {
    const shown = [];
    for (const { name, review } of examples) {
      const edition = editionOfReview(review, translated(catalogue, language));
      const { document } = edition.letter();
      const sheet = language === 'en' ? [[edition.sheet('full'), 'letter'] as const] : [];
      for (const [shownDocument, paper] of [[document, 'a4'], [document, 'letter'], ...sheet] as const) {
        shown.push({ name, paper, title: shownDocument.title, ...(await lastPage(shownDocument, paper)) });
      }
    }
    expect(shown.some(({ pages }) => pages > 1)).toBe(true);
    expect(shown.filter((each) => !isWell(each))).toEqual([]);
  });

  it('holds more than a few lines however long the text is', async () => {
    const line: Block[] = [{ kind: 'paragraph', id: 'p', inlines: [text('A line of its own.')] }];
    const counts: number[] = [];
    for (let paragraphs = 24; paragraphs <= 75; paragraphs += 1) {
      const blocks = Array.from({ length: paragraphs }, (_, at) => line.map((block) => ({ ...block, id: `p-${at}` })));
      const document = { title: 'T', language: 'en', author: '', date: '2026-03-01', blocks: blocks.flat() };
      const seen = await lastPage(document);
      expect(isWell(seen), `${paragraphs} paragraphs: ${JSON.stringify(seen)}`).toBe(true);
      counts.push(seen.pages);
    }
    expect(new Set(counts)).toEqual(new Set([1, 2, 3]));
  });
});
