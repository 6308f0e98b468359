import { getDocument, OPS, type PDFDocumentProxy } from 'pdfjs-dist/legacy/build/pdf.mjs';

export const openPdf = (bytes: Uint8Array): Promise<PDFDocumentProxy> => getDocument({ data: bytes.slice() }).promise;

export type Box = { readonly left: number; readonly bottom: number; readonly right: number; readonly top: number };
export type Placed = { readonly page: number; readonly words: string; readonly box: Box };

const isNumbers = (values: unknown): values is number[] =>
  Array.isArray(values) && values.every((value) => typeof value === 'number');

/** Every stretch of text with the box it is drawn in, in points from the lower left corner; in the order of the file. */
export async function textOf(pdf: PDFDocumentProxy): Promise<Placed[]> {
  const placed: Placed[] = [];
  for (let page = 1; page <= pdf.numPages; page += 1) {
    const { items } = await (await pdf.getPage(page)).getTextContent();
    for (const item of items) {
      if (!('str' in item) || item.str.trim() === '' || !isNumbers(item.transform)) continue;
      const [, , , , left = 0, bottom = 0] = item.transform;
      placed.push({
        page,
        words: item.str,
        box: { left, bottom, right: left + item.width, top: bottom + item.height },
      });
    }
  }
  return placed;
}

type Matrix = readonly [number, number, number, number, number, number];

const within = ([a, b, c, d, e, f]: Matrix, [a2, b2, c2, d2, e2, f2]: Matrix): Matrix => [
  a * a2 + c * b2,
  b * a2 + d * b2,
  a * c2 + c * d2,
  b * c2 + d * d2,
  a * e2 + c * f2 + e,
  b * e2 + d * f2 + f,
];

/** The boxes that pictures are painted in (ISO 32000-1, 8.9.5: the unit square under the current transformation). */
export async function picturesOf(pdf: PDFDocumentProxy): Promise<{ readonly page: number; readonly box: Box }[]> {
  const found: { page: number; box: Box }[] = [];
  for (let page = 1; page <= pdf.numPages; page += 1) {
    const { fnArray, argsArray } = await (await pdf.getPage(page)).getOperatorList();
    let current: Matrix = [1, 0, 0, 1, 0, 0];
    const kept: Matrix[] = [];
    fnArray.forEach((operator, at) => {
      if (operator === OPS.save) kept.push(current);
      else if (operator === OPS.restore) current = kept.pop() ?? current;
      else if (operator === OPS.transform) {
        const [a = 1, b = 0, c = 0, d = 1, e = 0, f = 0] = isNumbers(argsArray[at]) ? argsArray[at] : [];
        current = within(current, [a, b, c, d, e, f]);
      } else if (operator === OPS.paintImageXObject) {
        const [a, b, c, d, e, f] = current;
        const [xs, ys] = [
          [e, e + a, e + c, e + a + c],
          [f, f + b, f + d, f + b + d],
        ];
        found.push({
          page,
          box: { left: Math.min(...xs), bottom: Math.min(...ys), right: Math.max(...xs), top: Math.max(...ys) },
        });
      }
    });
  }
  return found;
}

export type TaggedElement = { readonly role: string; readonly alt: string | null };

/** The elements of the structure tree in reading order, over all pages. */
export async function elementsOf(pdf: PDFDocumentProxy): Promise<TaggedElement[]> {
  const walk = (node: unknown): TaggedElement[] => {
    if (typeof node !== 'object' || node === null || !('role' in node)) return [];
    const alt = 'alt' in node && typeof node.alt === 'string' ? node.alt : null;
    const children = 'children' in node && Array.isArray(node.children) ? node.children : [];
    return [{ role: String(node.role), alt }, ...children.flatMap(walk)];
  };
  const elements: TaggedElement[] = [];
  for (let page = 1; page <= pdf.numPages; page += 1) {
    elements.push(...walk(await (await pdf.getPage(page)).getStructTree()));
  }
  return elements;
}

/** Width and height of a page, in points. */
export async function sizeOf(pdf: PDFDocumentProxy): Promise<readonly [width: number, height: number]> {
  const [, , width = 0, height = 0] = (await pdf.getPage(1)).view;
  return [width, height];
}
