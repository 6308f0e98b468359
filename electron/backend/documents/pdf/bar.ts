import type { Table } from '../../../../engine/document/document.ts';
import { chalk, drawArtifact, type Flow, rule, soft } from './flow.ts';

/** Space between a bar and its figure, and the bar's height, in points. */
export const barGap = 8;
const height = 6;
const width = { least: 70, wish: 220 };

/** Room that a bar takes in a column: at the least, and where there is plenty. None in columns without bars. */
export function barRoom(table: Table, column: number): { readonly least: number; readonly wish: number } {
  if (table.bars?.column !== column) return { least: 0, wish: 0 };
  return { least: width.least + barGap, wish: width.wish + barGap };
}

/** A bar filled by its share, 0-1, its left end's middle at a point; dashed and empty where the share is not known. */
export function drawBar(
  flow: Flow,
  bar: { readonly share: number | null; readonly width: number },
  { x, y }: { readonly x: number; readonly y: number },
): void {
  const top = y - height / 2;
  drawArtifact(flow, 'Layout', (pdf) => {
    if (bar.share === null) {
      pdf.rect(x, top, bar.width, height).lineWidth(0.6).dash(2, { space: 2 }).stroke(soft).undash();
      return;
    }
    pdf.rect(x, top, bar.width, height).fill(rule);
    const filled = bar.width * Math.min(1, Math.max(0, bar.share));
    if (filled > 0) pdf.rect(x, top, filled, height).fill(chalk);
  });
}
