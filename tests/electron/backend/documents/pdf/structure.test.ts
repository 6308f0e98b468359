import { getDocument, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { describe, expect, it } from 'vitest';
import { renderReviewDocument } from '../../../../../electron/backend/documents/renderReviewDocument.ts';
import type { Entry, Review } from '../../../../../engine/review/review.ts';
import { editionOfReview } from '../../../../engine/edition/editionOfReview.ts';
import { draft, sessionOf } from '../../../../engine/letter/sample.ts';

const short = { criterion: 'depth', fault: 'shortOfDepth', severity: 'correct' as const, reps: [1, 2] };

async function open(review: Review, document: 'letter' | 'sheet'): Promise<PDFDocumentProxy> {
  const bytes = await renderReviewDocument({ edition: editionOfReview(review), document, format: 'pdf' });
  return getDocument({ data: bytes.slice() }).promise;
}

async function wordsOf(pdf: PDFDocumentProxy, page: number): Promise<string> {
  const { items } = await (await pdf.getPage(page)).getTextContent();
  return items.map((item) => ('str' in item ? `${item.str}${item.hasEOL ? ' ' : ''}` : '')).join('');
}

type Node = { readonly role?: string; readonly children?: readonly unknown[] };

const isNode = (value: unknown): value is Node => typeof value === 'object' && value !== null;

/** Every role of the structure tree in reading order, over all pages. */
async function rolesOf(pdf: PDFDocumentProxy): Promise<string[]> {
  const walk = (node: unknown): string[] =>
    isNode(node) ? [...(node.role === undefined ? [] : [node.role]), ...(node.children ?? []).flatMap(walk)] : [];
  const roles: string[] = [];
  for (let page = 1; page <= pdf.numPages; page += 1) {
    roles.push(...walk(await (await pdf.getPage(page)).getStructTree()));
  }
  return roles;
}

const review = sessionOf([draft({ flags: [short] })], {
  session: { id: 's', title: '', date: '2026-03-01', notes: '', painNote: 'Left wrist, 2 of 10' },
});

// Structure types and the order of headings: ISO 32000-1, 14.8.4.
describe('the tags of a PDF', () => {
  it.each(['letter', 'sheet'] as const)(
    'tell the headings, paragraphs and tables of the %s apart',
    async (document) => {
      const roles = await rolesOf(await open(review, document));
      expect(roles.filter((role) => role === 'H1')).toHaveLength(1);
      for (const role of ['H2', 'H3', 'P', 'Table', 'Caption', 'TR', 'TH', 'TD']) expect(roles).toContain(role);
      const levels = roles.filter((role) => /^H\d$/.test(role)).map((role) => Number(role.slice(1)));
      for (const [index, level] of levels.entries()) expect(level - (levels[index - 1] ?? 0)).toBeLessThanOrEqual(1);
    },
  );
});

describe('the bookmarks of a PDF', () => {
  it('lead to the parts in their order, with what to change under its heading', async () => {
    const pdf = await open(review, 'letter');
    const outline = await pdf.getOutline();
    expect(outline.map(({ title }) => title)).toEqual([
      'First, the pain you noted',
      'What to keep',
      'What to change',
      'Exercise by exercise',
      'What to film next',
      'Cautions',
    ]);
    const [, , change] = outline;
    expect(change?.items.map(({ title }: { title: string }) => title)).toEqual(['1. Short of depth']);
    for (const { dest } of outline) expect(dest).not.toBeNull();
  });
});

describe('the pages of a PDF', () => {
  it('are numbered one by one, out of all, each with the title', async () => {
    const flags = Array.from({ length: 80 }, () => short);
    const pdf = await open(sessionOf([draft({ flags })]), 'sheet');
    expect(pdf.numPages).toBeGreaterThan(2);
    for (let page = 1; page <= pdf.numPages; page += 1) {
      const words = await wordsOf(pdf, page);
      expect(words).toContain(`${page} / ${pdf.numPages}`);
      expect(words).toContain('Review sheet: Alva Brook, 1 March 2026');
    }
  });
});

function withCue(cue: string): Entry {
  const entry = draft({ flags: [short] });
  return { ...entry, flags: entry.flags.map((flag) => ({ ...flag, cue })) };
}

const named = (name: string): Review => {
  const plain = sessionOf([draft({ flags: [short] })]);
  return { ...plain, coach: name, trainee: { ...plain.trainee, name } };
};

describe('hostile words', () => {
  it.each([
    ['a name from right to left', named('سلام علي')],
    ['a name of emoji', named('🏋️‍♀️ 👩🏽‍🦱')],
    ['a name of combining marks', named(`Z${'\u0301'.repeat(190)}`)],
    ['a name as long as allowed', named('W'.repeat(200))],
    ['a name of half a pair', named('Robin \ud83c')],
    ['a cue of 300 letters', sessionOf([withCue('c'.repeat(300))])],
    ['a cue of 300 characters in words', sessionOf([withCue('sit down '.repeat(34).slice(0, 300))])],
    ['PDF syntax in a cue', sessionOf([withCue(') Tj ET endstream \\( << /S /JavaScript >>')])],
  ])('%s leave a PDF that opens, page by page', async (_name, hostile) => {
    for (const document of ['letter', 'sheet'] as const) {
      const pdf = await open(hostile, document);
      for (let page = 1; page <= pdf.numPages; page += 1) expect(await wordsOf(pdf, page)).toContain(`${page} / `);
      expect(await pdf.hasJSActions()).toBe(false);
    }
  });

  it('of a cue are all there', async () => {
    const cue = 'Let the hip fold (all of it) pass the knee line \\ then stand';
    const pdf = await open(sessionOf([withCue(cue)]), 'letter');
    let words = '';
    for (let page = 1; page <= pdf.numPages; page += 1) words += await wordsOf(pdf, page);
    expect(words.replace(/\s+/g, ' ')).toContain(cue);
  });
});
