import { type Block, type Inline, text } from '../../../../engine/document/document.ts';
import { chalk, child, drawArtifact, drawContent, type Element, type Flow, ink, type Prepared } from './flow.ts';
import { type Line, type Style, setLines } from './lines.ts';

const body: Style = { size: 10.5, leading: 15, face: 'regular' };
const headings = {
  1: { size: 19, leading: 25, face: 'strong' },
  2: { size: 13, leading: 18, face: 'strong' },
  3: { size: 10.5, leading: 15, face: 'strong' },
} as const satisfies Record<number, Style>;

/**
 * Draws lines from the flow's place on, over as many pages as they need, never leaving a single line of several
 * behind or ahead. `beside` is drawn next to each stretch.
 */
function drawOver(
  flow: Flow,
  lines: readonly Line[],
  style: Style,
  element: Element,
  tag: string,
  look: { readonly indent: number; readonly colour: string; readonly beside?: (fromY: number, toY: number) => void },
): void {
  let left = lines;
  while (left.length > 0) {
    const fitting = Math.floor(flow.room() / style.leading + 1e-6);
    const whole = left.length <= fitting;
    const count = whole ? left.length : left.length - fitting === 1 ? fitting - 1 : fitting;
    if (!whole && count < 2 && !flow.atTop()) {
      flow.newPage();
      continue;
    }
    const stretch = left.slice(0, Math.max(1, count));
    const fromY = flow.y();
    drawContent(flow, element, tag, stretch, style, { x: flow.left + look.indent, y: fromY, colour: look.colour });
    flow.moveDown(stretch.length * style.leading);
    look.beside?.(fromY, flow.y());
    left = left.slice(stretch.length);
    if (left.length > 0) flow.newPage();
  }
}

/** A paragraph. */
export function prepareText(flow: Flow, inlines: readonly Inline[]): Prepared {
  const lines = setLines(inlines, body, flow.width, flow.faces);
  return {
    gap: 6,
    least: Math.min(lines.length, 2) * body.leading,
    whole: lines.length * body.leading,
    draw: () => {
      const element = child(flow, flow.root, 'P');
      drawOver(flow, lines, body, element, 'P', { indent: 0, colour: ink });
    },
  };
}

/** Bookmarks: headings of the second level, those of the third under them. */
export type Outline = {
  item: { addItem: (title: string, options?: object) => Outline['item'] };
  section: Outline['item'] | null;
};

function bookmark(flow: Flow, outline: Outline, level: 2 | 3, title: string): void {
  const destination = { top: flow.y() * flow.scale, left: flow.pdf.page.width, fit: false, zoom: 0, expanded: true };
  if (level === 3 && outline.section !== null) outline.section.addItem(title, destination);
  else outline.section = outline.item.addItem(title, destination);
}

/** A heading with its bookmark; that of the first level is the document's title, underlined. */
export function prepareHeading(flow: Flow, outline: Outline, level: 1 | 2 | 3, title: string): Prepared {
  const style = headings[level];
  const lines = setLines([text(title)], style, flow.width, flow.faces);
  const height = lines.length * style.leading;
  return {
    gap: level === 2 ? 16 : level === 3 ? 10 : 0,
    least: height,
    draw: () => {
      if (level !== 1) bookmark(flow, outline, level, title);
      const element = child(flow, flow.root, `H${level}`);
      drawOver(flow, lines, style, element, `H${level}`, { indent: 0, colour: level === 2 ? chalk : ink });
      if (level !== 1) return;
      flow.moveDown(6);
      drawArtifact(flow, 'Layout', (pdf) => pdf.rect(flow.left, flow.y(), flow.width, 2.5).fill(chalk));
      flow.moveDown(10);
    },
  };
}

/** A list, its marks at the left. */
export function prepareList(flow: Flow, list: Extract<Block, { kind: 'list' }>): Prepared {
  const indent = list.ordered ? 20 : 14;
  const items = list.items.map((item, index) => ({
    mark: setLines([text(list.ordered ? `${index + 1}.` : '•')], body, indent, flow.faces),
    lines: setLines(item, body, flow.width - indent, flow.faces),
  }));
  return {
    gap: 6,
    least: Math.min(items[0]?.lines.length ?? 0, 2) * body.leading,
    draw: () => {
      const element = child(flow, flow.root, 'L');
      for (const { mark, lines } of items) {
        const item = child(flow, element, 'LI');
        if (flow.room() < Math.min(lines.length, 2) * body.leading) flow.newPage();
        const label = child(flow, item, 'Lbl');
        drawContent(flow, label, 'Lbl', mark, body, { x: flow.left, y: flow.y(), colour: ink });
        drawOver(flow, lines, body, child(flow, item, 'LBody'), 'LBody', { indent, colour: ink });
        flow.moveDown(3);
      }
    },
  };
}

/** A notice: its title, its paragraphs, a bar beside them. */
export function prepareNotice(flow: Flow, outline: Outline, notice: Extract<Block, { kind: 'notice' }>): Prepared {
  const indent = 14;
  const width = flow.width - indent;
  const style = headings[3];
  const title = setLines([text(notice.title)], style, width, flow.faces);
  const paragraphs = notice.paragraphs.map((inlines) => setLines(inlines, body, width, flow.faces));
  const height = paragraphs.reduce((sum, lines) => sum + lines.length * body.leading + 5, title.length * style.leading);
  const bar = (fromY: number, toY: number) =>
    drawArtifact(flow, 'Layout', (pdf) => pdf.rect(flow.left, fromY, 4, toY - fromY).fill(ink));
  return {
    gap: 16,
    // A short notice stays whole; a long one begins with at least its title and two lines.
    least:
      height < flow.pageHeight * 0.4
        ? height
        : title.length * style.leading + 5 + Math.min(paragraphs[0]?.length ?? 0, 2) * body.leading,
    draw: () => {
      const section = child(flow, flow.root, 'Sect');
      bookmark(flow, outline, 2, notice.title);
      const look = { indent, colour: ink, beside: bar };
      drawOver(flow, title, style, child(flow, section, 'H2'), 'H2', look);
      for (const lines of paragraphs) {
        if (flow.room() < 5 + Math.min(lines.length, 2) * body.leading) {
          flow.newPage();
        } else {
          bar(flow.y(), flow.y() + 5);
          flow.moveDown(5);
        }
        drawOver(flow, lines, body, child(flow, section, 'P'), 'P', look);
      }
      flow.moveDown(4);
    },
  };
}
