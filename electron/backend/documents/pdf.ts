import PDFDocument from 'pdfkit';
import type { RacksideDocument } from '../../../engine/document/index.ts';
import { prepareBlocks } from './pdfBlocks.ts';
import { numberPages, startFlow } from './pdfFlow.ts';
import { registerFaces } from './pdfFonts.ts';

/** Midnight of the document's day, so that the same document gives the same bytes. */
function dayOf(iso: string): Date {
  const day = new Date(`${iso}T00:00:00Z`);
  return Number.isNaN(day.getTime()) ? new Date(0) : day;
}

/**
 * The document as PDF 1.7 on A4: tagged, with language, title, bookmarks and page numbers, its fonts embedded. Characters
 * that the fonts lack are drawn as boxes and keep their text for readers and search (ActualText).
 */
export function documentToPdf(document: RacksideDocument): Promise<Uint8Array> {
  const day = dayOf(document.date);
  const pdf = new PDFDocument({
    autoFirstPage: false,
    bufferPages: true,
    displayTitle: true,
    info: {
      Title: document.title,
      ...(document.author !== '' && { Author: document.author }),
      Creator: 'Rackside',
      CreationDate: day,
      ModDate: day,
    },
    lang: document.language,
    margin: 0,
    pdfVersion: '1.7',
    size: 'A4',
    tagged: true,
  });
  const written = new Promise<Uint8Array>((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    pdf.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
    pdf.on('error', reject);
  });
  const flow = startFlow(pdf, registerFaces(pdf));
  for (const block of prepareBlocks(document, flow)) block.draw();
  flow.root.end();
  numberPages(flow, document.title);
  pdf.end();
  return written;
}
