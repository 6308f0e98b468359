import { text } from '../../../../engine/document/document.ts';
import { type Faces, settingOf } from './fonts.ts';
import { type Line, type Style, setLines } from './lines.ts';

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
  /** All of it, in points, where that is known; what stands beside a picture is kept together by it. */
  readonly whole?: number;
  readonly draw: () => void;
};

/** Where lines are drawn: left edge, top edge, colour; `shift` moves a line to the right within its column. */
export type LinePosition = {
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
  /** Points of the paper to one of the flow's. */
  readonly scale: number;
  readonly left: number;
  readonly width: number;
  readonly y: () => number;
  readonly moveDown: (points: number) => void;
  /** Points left on the page. */
  readonly room: () => number;
  /** Points on an empty page. */
  readonly pageHeight: number;
  readonly newPage: () => void;
  /** Counted from 1. */
  readonly page: () => number;
  readonly atTop: () => boolean;
  /** Points of the page that are filled. */
  readonly filled: () => number;
};

/** How pages are filled. */
export type Filling = {
  /** Under 1 everything but the margins is that much smaller. */
  readonly scale: number;
  /** Points that stay free at the foot of one page, so that the next one gets more; pages are counted from 1. */
  readonly free?: { readonly page: number; readonly points: number };
};

/** Starts the first page and the structure tree. */
export function startFlow(pdf: Pdf, faces: Faces, { scale, free }: Filling): Flow {
  const root = pdf.struct('Document');
  pdf.addStructure(root);
  const top = margin.top / scale;
  let y = top;
  let page = 0;
  const newPage = () => {
    pdf.addPage();
    if (scale !== 1) pdf.scale(scale);
    page += 1;
    y = top;
  };
  newPage();
  const { width, height } = pdf.page;
  const bottom = (height - margin.bottom) / scale;
  return {
    pdf,
    faces,
    root,
    scale,
    left: margin.left / scale,
    width: (width - margin.left - margin.right) / scale,
    y: () => y,
    moveDown: (points) => {
      y += points;
    },
    room: () => bottom - (free?.page === page ? free.points : 0) - y,
    pageHeight: bottom - top,
    newPage,
    page: () => page,
    atTop: () => y === top,
    filled: () => y - top,
  };
}

/** What the published types don't know of an element yet; `bbox` is left, top, right, bottom in points from the top left. */
type Attributes = PDFKit.Mixins.StructureElementOptions & {
  readonly scope?: 'Row' | 'Column';
  readonly bbox?: readonly [number, number, number, number];
};

/** A child element of the structure tree. */
export function child(flow: Flow, parent: Element, tag: string, attributes: Attributes = {}): Element {
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

/** How far the faces rise over the line they all stand on, as a share of their size. */
const ascent = 0.984;

/** Draws lines one under the other from a point. The ink's place in the line follows the leading. */
export function drawLines(flow: Flow, lines: readonly Line[], style: Style, at: LinePosition): void {
  const { pdf } = flow;
  lines.forEach((line, index) => {
    const left = at.x + (at.shift?.(line) ?? 0);
    const y = at.y + index * style.leading + (style.leading - style.size * 1.3) / 2 + ascent * style.size;
    for (const run of line.runs) {
      if (run.actual !== null) pdf.markContent('Span', { actual: run.actual });
      pdf
        .font(run.font)
        .fontSize(style.size)
        .fillColor(at.colour)
        .text(run.text, left + run.x, y, { lineBreak: false, baseline: 'alphabetic', ...settingOf(run.level) });
      if (run.actual !== null) pdf.endMarkedContent();
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
  at: LinePosition,
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
  const style: Style = { size, leading: size * 1.3, face: 'regular' };
  const setTitle = setLines([text(title)], style, flow.width, faces);
  const titleWidth = setTitle.length === 1 ? (setTitle[0]?.width ?? 0) : Infinity;
  for (let page = 0; page < count; page += 1) {
    pdf.switchToPage(start + page);
    const y = (pdf.page.height - margin.bottom + 24) / flow.scale;
    drawArtifact(flow, 'Pagination', () => {
      const number = setLines([text(`${page + 1} / ${count}`)], style, flow.width, faces);
      const numberWidth = number[0]?.width ?? 0;
      drawLines(flow, number, style, { x: flow.left + flow.width - numberWidth, y, colour: soft });
      if (titleWidth > flow.width - numberWidth - 20) return;
      drawLines(flow, setTitle, style, { x: flow.left, y, colour: soft, shift: ({ left }) => -left });
    });
  }
}
