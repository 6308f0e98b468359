import { type Block, type Picture, plainText } from './document.ts';

/** What may stand beside a picture. */
export type BesidePicture = Extract<Block, { kind: 'paragraph' | 'list' }>;

/** Blocks that are set together. */
export type BlockGroup =
  | { readonly kind: 'single'; readonly block: Exclude<Block, Picture> }
  | { readonly kind: 'row'; readonly pictures: readonly Picture[] }
  | { readonly kind: 'beside'; readonly picture: Picture; readonly blocks: readonly BesidePicture[] };

const isBeside = (block: Block, ids: readonly string[]): block is BesidePicture =>
  (block.kind === 'paragraph' || block.kind === 'list') && ids.includes(block.id);

function groupAt(blocks: readonly Block[], at: number): { readonly group: BlockGroup; readonly next: number } | null {
  const block = blocks[at];
  if (block === undefined) return null;
  if (block.kind !== 'picture') return { group: { kind: 'single', block }, next: at + 1 };
  let next = at + 1;
  if (block.beside !== undefined) {
    const own: BesidePicture[] = [];
    for (let one = blocks[next]; one !== undefined && isBeside(one, block.beside); one = blocks[next]) {
      own.push(one);
      next += 1;
    }
    return { group: { kind: 'beside', picture: block, blocks: own }, next };
  }
  const pictures = [block];
  for (let one = blocks[next]; one?.kind === 'picture' && one.beside === undefined; one = blocks[next]) {
    pictures.push(one);
    next += 1;
  }
  return { group: { kind: 'row', pictures }, next };
}

/** Whether a block only leads to what follows, so that no page may end with it: a heading, words that end in a colon. */
export function leadsOn(block: Block): boolean {
  if (block.kind === 'heading') return true;
  return block.kind === 'paragraph' && plainText(block.inlines).trimEnd().endsWith(':');
}

/** The blocks of a document in order, pictures with what is set beside them. */
export function groupBlocks(blocks: readonly Block[]): BlockGroup[] {
  const groups: BlockGroup[] = [];
  for (let found = groupAt(blocks, 0); found !== null; found = groupAt(blocks, found.next)) groups.push(found.group);
  return groups;
}
