import { type Block, type Inline, plainText } from '../document/document.ts';
import type { Letter, LetterSection, SectionId } from './letter.ts';
import type { LetterPlan } from './letterPlan.ts';

/** A paragraph that the coach wrote beside those of the plan. `basis` is what it rested on then (`groundsOf`). */
export type OwnParagraph = { readonly id: string; readonly words: string; readonly basis: string };

/** What the coach made of a letter beyond its words: their own paragraphs, what is left out, and the order. */
export type LetterShape = {
  readonly own: readonly OwnParagraph[];
  /** Ids of paragraphs that are left out, planned or the coach's own. */
  readonly leftOut: readonly string[];
  /** Ids of the whole letter's parts in the coach's order, as the letter was then; empty = as planned. */
  readonly order: readonly string[];
};

/** A letter as it was planned. */
export const plannedShape: LetterShape = { own: [], leftOut: [], order: [] };

/** A part of the letter that keeps together: a paragraph with the steps below it, or what stays in its place. */
export type LetterPart = {
  readonly id: string;
  readonly section: SectionId;
  /** Whether it can be moved and left out: paragraphs can, but for what is fixed. */
  readonly moves: boolean;
  readonly blocks: readonly Block[];
  /** Set for a paragraph of the coach's own; it has no blocks yet. */
  readonly own?: OwnParagraph;
};

const movesOf = (block: Block): boolean => block.kind === 'paragraph' && block.fixed !== true;

/** The parts of a letter in the order they were planned. */
export function partsOf({ sections }: Letter): LetterPart[] {
  const parts: LetterPart[] = [];
  for (const { id: section, blocks } of sections) {
    for (const block of blocks) {
      const last = parts.at(-1);
      if (block.kind === 'list' && last?.moves === true && block.id === `${last.id}-steps`) {
        parts.splice(-1, 1, { ...last, blocks: [...last.blocks, block] });
      } else parts.push({ id: block.id, section, moves: movesOf(block), blocks: [block] });
    }
  }
  return parts;
}

/** What keeps its place nearest before a part; undefined at the beginning. */
const anchorOf = (parts: readonly LetterPart[], part: LetterPart): LetterPart | undefined =>
  parts.slice(0, parts.indexOf(part)).findLast(({ moves }) => !moves);

const insertAfter = (parts: LetterPart[], part: LetterPart, before: LetterPart | undefined): void => {
  parts.splice(before === undefined ? 0 : parts.indexOf(before) + 1, 0, part);
};

/**
 * Planned parts and the coach's own in the coach's order. What can't be moved stays as planned; each other part goes after what it
 * came after in that order, as far as that is still there; a part that is new since goes where it was planned.
 * Nothing but the planned opening comes before the notices of pain and of what was unsafe, and nothing after the last line.
 */
export function arranged(planned: readonly LetterPart[], { own, order }: LetterShape): LetterPart[] {
  const rank = new Map(order.map((id, at) => [id, at]));
  const rankOf = ({ id }: LetterPart): number => rank.get(id) ?? order.length;
  const written = own.map((one): LetterPart => ({ id: one.id, section: 'closing', moves: true, blocks: [], own: one }));
  const moving = [...planned.filter(({ moves }) => moves), ...written];
  const parts = planned.filter(({ moves }) => !moves);
  for (const part of moving.filter(({ id }) => rank.has(id)).sort((a, b) => rankOf(a) - rankOf(b))) {
    const earlier = parts.filter((one) => rankOf(one) < rankOf(part));
    const before = earlier.reduce<LetterPart | undefined>(
      (nearest, one) => (nearest === undefined || rankOf(one) > rankOf(nearest) ? one : nearest),
      undefined,
    );
    insertAfter(parts, part, before);
  }
  for (const part of moving.filter(({ id }) => !rank.has(id))) {
    if (part.own !== undefined) parts.push(part);
    else insertAfter(parts, part, plannedBefore(planned, parts, part));
  }
  return withinBounds(parts);
}

/** What a part was planned after, unless that was moved away. */
function plannedBefore(
  planned: readonly LetterPart[],
  parts: readonly LetterPart[],
  part: LetterPart,
): LetterPart | undefined {
  const anchor = anchorOf(planned, part);
  const stands = (one: LetterPart): boolean => !one.moves || (parts.includes(one) && anchorOf(parts, one) === anchor);
  return planned.slice(0, planned.indexOf(part)).findLast(stands);
}

const isTopNotice = ({ id, blocks: [block] }: LetterPart): boolean =>
  block?.kind === 'notice' && (id === 'pain' || id === 'stop');

function withinBounds(parts: readonly LetterPart[]): LetterPart[] {
  const top = parts.findLastIndex(isTopNotice) + 1;
  const mayLead = ({ moves, section, own }: LetterPart): boolean =>
    !moves || (section === 'opening' && own === undefined);
  const head = parts.slice(0, top);
  const rest = [...head.filter((part) => !mayLead(part)), ...parts.slice(top)];
  const isLast = ({ id, moves }: LetterPart): boolean => id === 'basis' && !moves;
  return [...head.filter(mayLead), ...rest.filter((part) => !isLast(part)), ...rest.filter(isLast)];
}

/** Each part with the section it stands in now: its own where it was not moved, else that of what is before it. */
export function inSections(parts: readonly LetterPart[], planned: readonly LetterPart[]): LetterPart[] {
  let section: SectionId = 'opening';
  return parts.map((part) => {
    const stays = !part.moves || (part.own === undefined && anchorOf(parts, part)?.id === anchorOf(planned, part)?.id);
    if (stays) section = part.section;
    return { ...part, section };
  });
}

/** What is said of all things to change together, after the last of them and not under its heading. */
const afterAll: ReadonlySet<string> = new Set(['change-choice', 'change-later']);

/** Takes out headings, and pictures, of which nothing is left. */
export function withoutBareHeadings(parts: readonly LetterPart[]): LetterPart[] {
  const ids = new Set(parts.map(({ id }) => id));
  const pictured = parts.filter(({ blocks: [block] }) => {
    return block?.kind !== 'picture' || block.beside === undefined || block.beside.some((id) => ids.has(id));
  });
  return pictured.filter(({ section, blocks: [block] }, at) => {
    if (block?.kind !== 'heading') return true;
    const { level } = block;
    const after = pictured.slice(at + 1);
    const end = after.findIndex((one) => {
      const [first] = one.blocks;
      const isOfAll = level > 2 && afterAll.has(one.id);
      return one.section !== section || isOfAll || (first?.kind === 'heading' && first.level <= level);
    });
    return after.slice(0, end === -1 ? undefined : end).some(({ blocks: [first] }) => first?.kind !== 'heading');
  });
}

/** Parts as sections again, each run of one section together. */
export function sectionsOfParts(parts: readonly LetterPart[]): LetterSection[] {
  const sections: { id: SectionId; blocks: Block[] }[] = [];
  for (const { section, blocks } of parts) {
    const last = sections.at(-1);
    if (last?.id === section) last.blocks.push(...blocks);
    else sections.push({ id: section, blocks: [...blocks] });
  }
  return sections;
}

/**
 * What a paragraph of the coach's own rests on: pain that was noted and what was unsafe, in no language; '' without either.
 * Where it is another later, the paragraph may say what no longer suits.
 */
export function groundsOf({ pain, stops }: LetterPlan): string {
  if (pain === null && stops.length === 0) return '';
  const noted = pain && { words: pain.words, step: pain.step, redFlag: pain.redFlag };
  return JSON.stringify({ pain: noted, stops: stops.map(({ key }) => key).sort() });
}

/** The words of a line as the editor shows it where it can't be edited. */
export const lineWords = (items: readonly (readonly Inline[])[]): string => items.map(plainText).join('\n');
