import type { Faces } from './pdfFonts.ts';
import type { Line, Style } from './pdfLines.ts';

type Pdf = PDFKit.PDFDocument;
export type Element = PDFKit.PDFStructureElement;

export const ink = '#22201c';
export const soft = '#565047';
export const rule = '#d8cfbd';
export const chalk = '#1f5a70';

/** Margins in points: 20 mm left and right, 18 mm at the top, room for the page number at the foot. */
const margin = { left: 56.7, right: 56.7, top: 51, bottom: 62 };

/** A block ready to be drawn. */
export type Prepared = {
  /** Space above, in points; none at the top of a page. */
  readonly gap: number;
  /** What must fit on the page for the block to begin there. */
  readonly least: number;
  readonly draw: () => void;
};

/** Where lines are drawn: left edge, top edge, colour; `shift` moves a line to the right within its column. */
export type LinePlace = {
  readonly x: number;
  readonly y: number;
  readonly colour: string;
  readonly shift?: (line: Line) => number;
};

/** Where the next thing goes, and what it goes into. */
export type Flow = {
  readonly pdf: Pdf;
  readonly faces: Faces;
  readonly root: Element;
  readonly left: number;
  readonly width: number;
  readonly y: () => number;
  readonly moveDown: (points: number) => void;
  /** Points left on the page. */
  readonly room: () => number;
  /** Points on an empty page. */
  readonly pageHeight: number;
  readonly newPage: () => void;
  readonly atTop: () => boolean;
};

/** Starts the first page and the structure tree. */
export function startFlow(pdf: Pdf, faces: Faces): Flow {
  const root = pdf.struct('Document');
  pdf.addStructure(root);
  let y = margin.top;
  const newPage = () => {
    pdf.addPage();
    y = margin.top;
  };
  newPage();
  const { width, height } = pdf.page;
  const bottom = height - margin.bottom;
  return {
    pdf,
    faces,
    root,
    left: margin.left,
    width: width - margin.left - margin.right,
    y: () => y,
    moveDown: (points) => {
      y += points;
    },
    room: () => bottom - y,
    pageHeight: bottom - margin.top,
    newPage,
    atTop: () => y === margin.top,
  };
}

/** A child element of the structure tree. */
export function child(flow: Flow, parent: Element, tag: string, scope?: 'Row' | 'Column'): Element {
  // The published types don't know the scope of a heading cell yet.
  const attributes: PDFKit.Mixins.StructureElementOptions & { readonly scope?: string } =
    scope === undefined ? {} : { scope };
  const element = flow.pdf.struct(tag, attributes);
  parent.add(element);
  return element;
}

/** Draws something that is no content: rules, page numbers. */
export function drawArtifact(flow: Flow, type: 'Layout' | 'Pagination', draw: (pdf: Pdf) => void): void {
  flow.pdf.markContent('Artifact', { type });
  draw(flow.pdf);
  flow.pdf.endMarkedContent();
}

/** Draws lines one under the other from a point. The ink's place in the line follows the leading. */
export function drawLines(flow: Flow, lines: readonly Line[], style: Style, at: LinePlace): void {
  const { pdf, faces } = flow;
  lines.forEach((line, index) => {
    let x = at.x + (at.shift?.(line) ?? 0);
    const y = at.y + index * style.leading + (style.leading - style.size * 1.3) / 2;
    for (const run of line.runs) {
      if (run.actual !== null) pdf.markContent('Span', { actual: run.actual });
      pdf.font(run.font).fontSize(style.size).fillColor(at.colour).text(run.text, x, y, { lineBreak: false });
      if (run.actual !== null) pdf.endMarkedContent();
      x += faces.width(run, style.size);
    }
  });
}

/** Draws lines as content of an element of the structure tree. */
export function drawContent(
  flow: Flow,
  element: Element,
  tag: string,
  lines: readonly Line[],
  style: Style,
  at: LinePlace,
): void {
  element.add(flow.pdf.markStructureContent(tag));
  drawLines(flow, lines, style, at);
  flow.pdf.endMarkedContent();
}

/** "2 / 3" at the foot of every page, beside the title where it fits. */
export function numberPages(flow: Flow, title: string): void {
  const { pdf, faces } = flow;
  const { start, count } = pdf.bufferedPageRange();
  const size = 8.5;
  const width = (text: string) => faces.runs(text, 'regular').reduce((sum, run) => sum + faces.width(run, size), 0);
  for (let page = 0; page < count; page += 1) {
    pdf.switchToPage(start + page);
    const y = pdf.page.height - margin.bottom + 24;
    const number = `${page + 1} / ${count}`;
    const style: Style = { size, leading: size * 1.3, face: 'regular' };
    const line = (text: string): Line => ({ runs: faces.runs(text, 'regular'), width: width(text) });
    drawArtifact(flow, 'Pagination', () => {
      const numberWidth = width(number);
      drawLines(flow, [line(number)], style, { x: flow.left + flow.width - numberWidth, y, colour: soft });
      if (width(title) > flow.width - numberWidth - 20) return;
      drawLines(flow, [line(title)], style, { x: flow.left, y, colour: soft });
    });
  }
}
