import PDFDocument from 'pdfkit';
import type { RacksideDocument } from '../../../../engine/document/document.ts';
import type { Paper } from '../../../contract/handover.ts';
import { type EastAsianFont, openEastAsianFonts } from '../../lettering/eastAsianFonts.ts';
import { prepareBlocks } from './blocks.ts';
import { documentWords } from './documentWords.ts';
import { numberPages, startFlow } from './flow.ts';
import { registerFaces } from './fonts.ts';
import type { PictureFiles } from './pictureFiles.ts';
import { openPictures } from './pictures.ts';

const sizeOf: Readonly<Record<Paper, 'A4' | 'LETTER'>> = { a4: 'A4', letter: 'LETTER' };

export type PdfOptions = {
  /** A4 without it. */
  readonly paper?: Paper;
  /** The files that the document's pictures name; a picture whose file isn't among them is told in words. */
  readonly pictures?: PictureFiles;
};

/** Midnight of the document's day, so that the same document gives the same bytes. */
function dayOf(iso: string): Date {
  const day = new Date(`${iso}T00:00:00Z`);
  return Number.isNaN(day.getTime()) ? new Date(0) : day;
}

type Made = { readonly pages: number; readonly finish: () => Promise<Uint8Array> };

type Set = PdfOptions & { readonly fonts: readonly EastAsianFont[] };

function layOut(document: RacksideDocument, { paper = 'a4', pictures = new Map(), fonts }: Set, scale: number): Made {
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
    size: sizeOf[paper],
    tagged: true,
  });
  const flow = startFlow(pdf, registerFaces(pdf, fonts), scale);
  for (const block of prepareBlocks(document, flow, openPictures(pdf, document, pictures))) block.draw();
  return {
    pages: flow.page(),
    finish: () => {
      const written = new Promise<Uint8Array>((resolve, reject) => {
        const chunks: Uint8Array[] = [];
        pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk));
        pdf.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
        pdf.on('error', reject);
      });
      flow.root.end();
      numberPages(flow, document.title);
      pdf.end();
      return written;
    },
  };
}

/** Sizes that a document which is to fit one page is tried in; smaller than the last, figures would be under 6.5 points. */
const scales = [1, 0.93, 0.86, 0.79, 0.73] as const;

/** The fonts for what is Chinese, Japanese or Korean in a document. */
async function fontsFor(document: RacksideDocument): Promise<readonly EastAsianFont[]> {
  const { light, strong } = documentWords(document);
  return [...(await openEastAsianFonts(light, 400)), ...(await openEastAsianFonts(strong, 700))];
}

/**
 * The document as PDF 1.7: tagged, with language, title, bookmarks and page numbers, its fonts embedded. Words in scripts
 * from right to left run that way. Characters that the fonts lack are drawn as boxes; those, and what is drawn in another
 * order than it is read in, keep their text for readers and search (ActualText).
 */
export async function documentToPdf(document: RacksideDocument, options: PdfOptions = {}): Promise<Uint8Array> {
  const set: Set = { ...options, fonts: await fontsFor(document) };
  if (document.fits === 'onePage') {
    let fewest: Made | null = null;
    for (const scale of scales) {
      const made = layOut(document, set, scale);
      if (made.pages === 1) return made.finish();
      if (fewest === null || made.pages < fewest.pages) fewest = made;
    }
    if (fewest !== null) return fewest.finish();
  }
  return layOut(document, set, 1).finish();
}
