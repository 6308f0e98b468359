import type { Letter } from '../state/letterState.ts';

export type Line = Letter['paragraphs'][number];

/** After which part a paragraph is to be put; null = before all others. */
export type Place = { readonly after: string | null };

/** Notices that nothing but the opening comes before. */
const first = new Set(['pain', 'stop']);
const last = 'basis';

/** Where a paragraph goes a step up or down; null where it can't go on. */
export function placeBeyond(lines: readonly Line[], id: string, direction: 'up' | 'down'): Place | null {
  const at = lines.findIndex((line) => line.id === id);
  if (at === -1) return null;
  if (direction === 'down') {
    const next = lines[at + 1]?.part;
    return next === undefined || next === last ? null : { after: next };
  }
  const before = lines[at - 1]?.part;
  if (before === undefined || first.has(before)) return null;
  const beyond = lines.slice(0, at).findLast(({ part }) => part !== before);
  return { after: beyond?.part ?? null };
}

/** The paragraph that has the focus once another is gone: the next one, else the one before. */
export function neighbourOf(lines: readonly Line[], id: string): string | null {
  const at = lines.findIndex((line) => line.id === id);
  const canHold = ({ kind }: Line): boolean => kind === 'paragraph';
  return (lines.slice(at + 1).find(canHold) ?? lines.slice(0, Math.max(0, at)).findLast(canHold))?.id ?? null;
}
