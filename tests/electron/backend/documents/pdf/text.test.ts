import { inflateSync } from 'node:zlib';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { documentToPdf } from '../../../../../electron/backend/documents/pdf/documentToPdf.ts';
import { type Block, type RacksideDocument, text } from '../../../../../engine/document/document.ts';

const documentOf = (...blocks: Block[]): RacksideDocument => ({
  title: 'Pages',
  language: 'en',
  author: '',
  date: '2026-03-01',
  blocks,
});

const paragraph = (id: string, words: string): Block => ({ kind: 'paragraph', id, inlines: [text(words)] });

/** What each page says, line ends as spaces. */
async function pagesOf(document: RacksideDocument): Promise<string[]> {
  const pdf = await getDocument({ data: await documentToPdf(document) }).promise;
  return Promise.all(
    Array.from({ length: pdf.numPages }, async (_, index) => {
      const { items } = await (await pdf.getPage(index + 1)).getTextContent();
      return items
        .map((item) => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : ''))
        .join('')
        .replace(/\s+/g, ' ');
    }),
  );
}

/** The content streams, inflated (ISO 32000-1, FlateDecode). */
function streamsOf(bytes: Uint8Array): string {
  const file = Buffer.from(bytes);
  let streams = '';
  for (let at = file.indexOf('stream\n'); at !== -1; at = file.indexOf('stream\n', at + 7)) {
    const end = file.indexOf('\nendstream', at);
    try {
      streams += inflateSync(file.subarray(at + 7, end)).toString('latin1');
    } catch {
      // Fonts and the like are no pages.
    }
  }
  return streams;
}

describe('characters that no font has', () => {
  it('keep their text behind the box that is drawn (ISO 32000-1, 14.9.4, ActualText in UTF-16BE)', async () => {
    const streams = streamsOf(await documentToPdf(documentOf(paragraph('p', 'before 🏋️ after'))));
    const utf16 = Buffer.from('\uFEFF🏋️', 'utf16le').swap16().toString('latin1');
    expect(streams).toContain('/ActualText');
    expect(streams.replace(/\\([()\\])/g, '$1')).toContain(utf16);
  });

  it('leave the extended Latin letters of names readable', async () => {
    const [page] = await pagesOf(documentOf(paragraph('p', 'Łucja Őri and Ştefan')));
    expect(page).toContain('Łucja Őri and Ştefan');
  });
});

describe('scripts from left to right that the faces lack', () => {
  it.each(['Олена Ґудзь', 'Νίκη Παπαδοπούλου', 'Nguyễn Thị Hạnh'])(
    '%s is set in letters, not in boxes',
    async (name) => {
      const document = documentOf(paragraph('p', name));
      const [page = ''] = await pagesOf(document);
      // A mark that the font draws apart from its letter reads as a control.
      expect(page.replace(/\s?\p{Cc}/gu, '').normalize('NFC')).toContain(name);
      expect(streamsOf(await documentToPdf(document))).not.toContain('/ActualText');
    },
  );

  it('stand on the line of the letters around them', async () => {
    const pdf = await getDocument({ data: await documentToPdf(documentOf(paragraph('p', 'Olena Олена'))) }).promise;
    const { items } = await (await pdf.getPage(1)).getTextContent();
    const lines = items.flatMap((item) => ('str' in item && /Olena|Олена/.test(item.str) ? [item.transform[5]] : []));
    expect(lines.length).toBeGreaterThan(0);
    expect(new Set(lines).size).toBe(1);
  });

  it('keep their text behind letters that are drawn in another order (ISO 32000-1, 14.9.4)', async () => {
    const bytes = await documentToPdf(documentOf(paragraph('p', 'before शर्मा after')));
    expect(Buffer.from(bytes).toString('latin1')).toMatch(/\/BaseFont \/[A-Z]{6}\+NotoSans/);
    const utf16 = Buffer.from('\uFEFFशर्मा', 'utf16le').swap16().toString('latin1');
    expect(streamsOf(bytes).replaceAll('\\t', '\t')).toContain(utf16);
  });
});

describe('page breaks', () => {
  it('never leave a heading at the foot of a page without what it heads', async () => {
    for (let lines = 25; lines < 40; lines += 1) {
      const filler = Array.from({ length: lines }, (_, index) => paragraph(`p${index}`, 'filler'));
      const pages = await pagesOf(
        documentOf(
          ...filler,
          { kind: 'heading', level: 2, id: 'h2', text: 'Section' },
          { kind: 'heading', level: 3, id: 'h3', text: 'Part' },
          paragraph('last', 'Headed words'),
        ),
      );
      const page = pages.find((words) => words.includes('Section'));
      expect(page).toContain('Part');
      expect(page).toContain('Headed words');
    }
  });

  it('repeat the head of a table on each page, and keep every cell', async () => {
    const rows = Array.from({ length: 90 }, (_, index) => [[text(`row-${index}`)], [text('cell')]]);
    const pages = await pagesOf(
      documentOf({
        kind: 'table',
        id: 't',
        caption: 'Caption',
        columns: [
          { label: 'First', align: 'start' },
          { label: 'Second', align: 'end' },
        ],
        rows,
      }),
    );
    expect(pages.length).toBeGreaterThan(1);
    for (const page of pages) expect(page).toContain('First Second');
    const found = pages.join(' ').match(/row-\d+/g);
    expect(found).toEqual(rows.map((_, index) => `row-${index}`));
  });

  it('split a row that is taller than a page, and lose no word of it', async () => {
    const words = Array.from({ length: 2000 }, (_, index) => `w${index}`);
    const pages = await pagesOf(
      documentOf({
        kind: 'table',
        id: 't',
        caption: 'Caption',
        columns: [
          { label: 'A', align: 'start' },
          { label: 'B', align: 'start' },
        ],
        rows: [[[text('one')], [text(words.join(' '))]]],
      }),
    );
    expect(pages.length).toBeGreaterThan(1);
    expect(pages.join(' ').match(/\bw\d+\b/g)).toEqual(words);
  });

  it('come to an end when the head of a table is taller than a page', async () => {
    const label = 'word '.repeat(2500);
    const pages = await pagesOf(
      documentOf({
        ...{ kind: 'table', id: 't', caption: 'Caption', columns: [{ label, align: 'start' }] },
        rows: [[[text('first')]], [[text('second')]]],
      }),
    );
    expect(pages.length).toBeLessThan(10);
  });
});
