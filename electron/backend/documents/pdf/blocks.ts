import { type Block, type Picture, type RacksideDocument, text } from '../../../../engine/document/document.ts';
import { type BesidePicture, type BlockGroup, groupBlocks, leadsOn } from '../../../../engine/document/groupBlocks.ts';
import { type Flow, type Prepared, soft } from './flow.ts';
import { besideFigure, besideGap, type OpenPicture, prepareRow } from './pictures.ts';
import { prepareTable } from './table.ts';
import { type Outline, prepareHeading, prepareList, prepareNotice, prepareText } from './text.ts';

const prepareBeside = (flow: Flow, block: BesidePicture): Prepared =>
  block.kind === 'list' ? prepareList(flow, block) : prepareText(flow, block.inlines);

/** Texts with a picture at their side; below the picture they have the whole width again. */
function prepareWithFigure(
  flow: Flow,
  picture: Picture,
  opened: OpenPicture,
  blocks: readonly BesidePicture[],
): Prepared {
  const figure = besideFigure(flow, picture, opened);
  const narrow: Flow = { ...flow, width: flow.width - figure.width - besideGap };
  const [first] = blocks;
  return {
    gap: 8,
    least: Math.max(figure.height, first === undefined ? 0 : prepareBeside(narrow, first).least),
    draw: () => {
      const page = flow.page();
      const bottom = flow.y() + figure.height;
      const beside = () => flow.page() === page && flow.y() < bottom;
      figure.draw(flow.root, { x: flow.left + narrow.width + besideGap, y: flow.y() + 3 });
      for (const [index, block] of blocks.entries()) {
        const prepared = prepareBeside(beside() ? narrow : flow, block);
        if (index > 0) flow.moveDown(prepared.gap);
        // Lines set narrow for a picture's side would stand alone on a page without it.
        const needed = beside() ? Math.min(prepared.whole ?? prepared.least, flow.pageHeight / 2) : prepared.least;
        if (flow.room() >= needed) {
          prepared.draw();
          continue;
        }
        flow.newPage();
        prepareBeside(flow, block).draw();
      }
      if (beside()) flow.moveDown(bottom - flow.y() + 6);
    },
  };
}

function prepare(flow: Flow, outline: Outline, block: Exclude<Block, Picture>): Prepared {
  switch (block.kind) {
    case 'heading':
      return prepareHeading(flow, outline, block.level, block.text);
    case 'paragraph':
      return prepareText(flow, block.inlines);
    case 'list':
      return prepareList(flow, block);
    case 'table':
      return prepareTable(flow, block, soft);
    case 'notice':
      return prepareNotice(flow, outline, block);
  }
}

/** A picture that can't be drawn is told in words. */
const prepareUnseen = (flow: Flow, { caption, alt }: Picture): Prepared =>
  prepareText(flow, [text(`${caption} (${alt})`)]);

function prepareGroup(
  flow: Flow,
  outline: Outline,
  group: BlockGroup,
  pictures: ReadonlyMap<string, OpenPicture>,
): Prepared[] {
  switch (group.kind) {
    case 'single':
      return [prepare(flow, outline, group.block)];
    case 'row': {
      const seen = group.pictures.flatMap((picture): (readonly [Picture, OpenPicture])[] => {
        const opened = pictures.get(picture.id);
        return opened === undefined ? [] : [[picture, opened]];
      });
      const unseen = group.pictures.filter(({ id }) => !pictures.has(id));
      return [
        ...(seen.length === 0 ? [] : [prepareRow(flow, seen)]),
        ...unseen.map((picture) => prepareUnseen(flow, picture)),
      ];
    }
    case 'beside': {
      const opened = pictures.get(group.picture.id);
      return opened === undefined
        ? [prepareUnseen(flow, group.picture), ...group.blocks.map((block) => prepareBeside(flow, block))]
        : [prepareWithFigure(flow, group.picture, opened, group.blocks)];
    }
  }
}

/** The document's title and blocks, in order; each starts a page where it, or what it heads, would not fit. */
export function prepareBlocks(
  document: RacksideDocument,
  flow: Flow,
  pictures: ReadonlyMap<string, OpenPicture>,
): { readonly draw: () => void }[] {
  const outline: Outline = { item: flow.pdf.outline, section: null };
  const parts = groupBlocks(document.blocks).flatMap((group) => {
    const heads = group.kind === 'single' && leadsOn(group.block);
    return prepareGroup(flow, outline, group, pictures).map((prepared) => ({ prepared, heads }));
  });
  const all = [{ prepared: prepareHeading(flow, outline, 1, document.title), heads: true }, ...parts];
  const needed = (index: number): number => {
    const own = all[index];
    if (own === undefined) return 0;
    const next = all[index + 1];
    return own.prepared.least + (own.heads && next !== undefined ? next.prepared.gap + needed(index + 1) : 0);
  };
  return all.map(({ prepared }, index) => ({
    draw: () => {
      if (!flow.atTop()) flow.moveDown(prepared.gap);
      if (flow.room() < needed(index) && !flow.atTop()) flow.newPage();
      prepared.draw();
    },
  }));
}
