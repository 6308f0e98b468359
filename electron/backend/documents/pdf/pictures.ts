import { type Picture, type RacksideDocument, text } from '../../../../engine/document/document.ts';
import { child, drawContent, type Element, type Flow, type Prepared, soft } from './flow.ts';
import { type Line, type Style, setLines } from './lines.ts';
import { type PictureFiles, pictureBytes } from './pictureFiles.ts';

type Pdf = PDFKit.PDFDocument;

/** A picture that can be drawn, in its own pixels. */
export type OpenPicture = { readonly bytes: Buffer; readonly width: number; readonly height: number };

declare global {
  namespace PDFKit.Mixins {
    interface PDFImage {
      /** Not in the published types. Throws for what is neither JPEG nor PNG. */
      openImage(source: Buffer): { readonly width: number; readonly height: number };
    }
  }
}

const captionStyle: Style = { size: 8.5, leading: 11.5, face: 'regular' };
const gutter = 14;
const captionGap = 3;

function open(pdf: Pdf, bytes: Uint8Array): OpenPicture | null {
  try {
    const { width, height } = pdf.openImage(Buffer.from(bytes));
    return width > 0 && height > 0 ? { bytes: Buffer.from(bytes), width, height } : null;
  } catch {
    return null;
  }
}

/** The document's pictures by the ids of their blocks; what is no picture, or not there, is left out. */
export function openPictures(pdf: Pdf, document: RacksideDocument, files: PictureFiles): Map<string, OpenPicture> {
  const opened = document.blocks.flatMap((block): [string, OpenPicture][] => {
    const bytes = block.kind === 'picture' ? pictureBytes(block.source, files) : null;
    const picture = bytes === null ? null : open(pdf, bytes);
    return picture === null ? [] : [[block.id, picture]];
  });
  return new Map(opened);
}

/** A picture with its caption under it, set to a width. */
export type Figure = {
  readonly width: number;
  readonly height: number;
  /** Draws it at a place of the page, and never over its end: it must fit. */
  readonly draw: (parent: Element, at: { readonly x: number; readonly y: number }) => void;
};

const isUpright = ({ width, height }: OpenPicture): boolean => height > width;

/** Sets a picture to a width, smaller where it would be higher than `mostHeight`. */
function setFigure(flow: Flow, { alt, caption }: Picture, opened: OpenPicture, room: FigureRoom): Figure {
  const scale = Math.min(room.width / opened.width, room.mostHeight / opened.height);
  const [width, height] = [opened.width * scale, opened.height * scale];
  const lines: readonly Line[] = setLines([text(caption)], captionStyle, room.width, flow.faces);
  return {
    width: room.width,
    height: height + captionGap + lines.length * captionStyle.leading,
    draw: (parent, { x, y }) => {
      const { pdf } = flow;
      const figure = child(flow, parent, 'Figure', { alt, bbox: scaled(flow, [x, y, x + width, y + height]) });
      figure.add(pdf.markStructureContent('Figure'));
      pdf.image(opened.bytes, x, y, { width, height });
      pdf.endMarkedContent();
      const at = { x, y: y + height + captionGap, colour: soft };
      drawContent(flow, child(flow, parent, 'P'), 'P', lines, captionStyle, at);
    },
  };
}

/** A box of the flow in points of the paper. */
const scaled = ({ scale }: Flow, [left, top, right, bottom]: Box): Box => [
  left * scale,
  top * scale,
  right * scale,
  bottom * scale,
];

type Box = readonly [left: number, top: number, right: number, bottom: number];
type FigureRoom = { readonly width: number; readonly mostHeight: number };

/** The figure that stands at the side of a text. */
export function besideFigure(flow: Flow, picture: Picture, opened: OpenPicture): Figure {
  const width = flow.width * (isUpright(opened) ? 0.3 : 0.42);
  return setFigure(flow, picture, opened, { width, mostHeight: flow.pageHeight * 0.45 });
}

/** Room between a figure and the text beside it. */
export const besideGap = gutter + 4;

/** Figures side by side, four upright ones or two others to a row. */
function rowsOf(flow: Flow, pictures: readonly (readonly [Picture, OpenPicture])[]): Figure[][] {
  const rows: Figure[][] = [];
  let left = 0;
  for (const [picture, opened] of pictures) {
    const count = isUpright(opened) ? 4 : 2;
    const width = (flow.width - (count - 1) * gutter) / count;
    const figure = setFigure(flow, picture, opened, { width, mostHeight: flow.pageHeight * 0.3 });
    const row = rows.at(-1);
    if (row !== undefined && width <= left + 0.01) row.push(figure);
    else {
      rows.push([figure]);
      left = flow.width;
    }
    left -= width + gutter;
  }
  return rows;
}

/** Pictures in rows; no row is cut by the end of a page. */
export function prepareRow(flow: Flow, pictures: readonly (readonly [Picture, OpenPicture])[]): Prepared {
  const rows = rowsOf(flow, pictures);
  const heightOf = (row: readonly Figure[]) => Math.max(...row.map(({ height }) => height));
  return {
    gap: 10,
    least: rows[0] === undefined ? 0 : heightOf(rows[0]),
    draw: () => {
      const section = child(flow, flow.root, 'Div');
      for (const row of rows) {
        if (flow.room() < heightOf(row) && !flow.atTop()) flow.newPage();
        let x = flow.left;
        for (const figure of row) {
          figure.draw(section, { x, y: flow.y() });
          x += figure.width + gutter;
        }
        flow.moveDown(heightOf(row) + 8);
      }
    },
  };
}
