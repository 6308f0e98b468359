import PDFDocument from 'pdfkit';
import { type Block, type Inline, plainText, type RacksideDocument } from '../../../../engine/document/document.ts';
import type { Paper } from '../../../contract/handover.ts';
import { type EastAsianFont, openEastAsianFonts } from '../../lettering/eastAsianFonts.ts';
import { prepareBlocks } from './blocks.ts';
import { type Filling, numberPages, startFlow } from './flow.ts';
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

type Made = {
  readonly pages: number;
  /** Points that its last page is filled with. */
  readonly lastPage: number;
  readonly finish: () => Promise<Uint8Array>;
};

type Set = PdfOptions & { readonly fonts: readonly EastAsianFont[] };

function layOut(
  document: RacksideDocument,
  { paper = 'a4', pictures = new Map(), fonts }: Set,
  filling: Filling,
): Made {
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
  const flow = startFlow(pdf, registerFaces(pdf, fonts), filling);
  for (const block of prepareBlocks(document, flow, openPictures(pdf, document, pictures))) block.draw();
  return {
    pages: flow.page(),
    lastPage: flow.filled(),
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

/** What a last page holds at the least: some seven lines of text, in points. */
const leastOnLastPage = 105;

/** How much smaller all may become so that a few lines need no page of their own; nobody sees so little. */
const tighter = [0.98, 0.96, 0.94] as const;

/** Sets a document so that its last page is no leftover: a little smaller, or with more of the page before moved to it. */
function setWell(document: RacksideDocument, set: Set, scale: number): Made {
  const usual = layOut(document, set, { scale });
  if (usual.pages === 1 || usual.lastPage >= leastOnLastPage) return usual;
  for (const share of tighter) {
    const made = layOut(document, set, { scale: scale * share });
    if (made.pages < usual.pages) return made;
  }
  const free = { page: usual.pages - 1, points: leastOnLastPage - usual.lastPage };
  const moved = layOut(document, set, { scale, free });
  return moved.pages === usual.pages && moved.lastPage > usual.lastPage ? moved : usual;
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
    let fewest: (Made & { readonly scale: number }) | null = null;
    for (const scale of scales) {
      const made = layOut(document, set, { scale });
      if (made.pages === 1) return made.finish();
      if (fewest === null || made.pages < fewest.pages) fewest = { ...made, scale };
    }
    return setWell(document, set, fewest?.scale ?? 1).finish();
  }
  return setWell(document, set, 1).finish();
}

/** Every word of a document, by the weight it is set in. */
export type DocumentWords = { readonly light: string; readonly strong: string };

type Said = { readonly light: readonly string[]; readonly strong: readonly string[] };

const light = (...words: readonly string[]): Said => ({ light: words, strong: [] });
const strong = (...words: readonly string[]): Said => ({ light: [], strong: words });

const ofLines = (lines: readonly (readonly Inline[])[]): readonly Said[] =>
  lines.flat().map((inline) => (inline.kind === 'strong' ? strong(plainText([inline])) : light(plainText([inline]))));

function ofBlock(block: Block): readonly Said[] {
  switch (block.kind) {
    case 'heading':
      return [strong(block.text)];
    case 'paragraph':
      return ofLines([block.inlines]);
    case 'list':
      return ofLines(block.items);
    case 'table':
      return [light(block.caption), strong(...block.columns.map(({ label }) => label)), ...ofLines(block.rows.flat())];
    case 'picture':
      return [light(block.caption, block.alt)];
    case 'notice':
      return [strong(block.title), ...ofLines(block.paragraphs)];
  }
}

/** The words that a document is set in, so that its fonts can be opened before it is. */
export function documentWords({ title, blocks }: RacksideDocument): DocumentWords {
  const said = [light(title), strong(title), ...blocks.flatMap(ofBlock)];
  return {
    light: said.flatMap((each) => each.light).join(' '),
    strong: said.flatMap((each) => each.strong).join(' '),
  };
}
