import { describe, expect, it } from 'vitest';
import { keptWhereSame } from '../../../renderer/state/keptWhereSame.ts';

type Line = { readonly id: string; readonly says: { readonly word: string } };
const idOf = ({ id }: Line): string => id;
const line = (id: string, word: string): Line => ({ id, says: { word } });

describe('a list read anew', () => {
  it('keeps what has not changed, in the new order, and takes what has', () => {
    const before = [line('a', 'one'), line('b', 'two'), line('c', 'three')];
    const kept = keptWhereSame(before, [line('c', 'three'), line('a', 'other'), line('d', 'four')], idOf);
    expect(kept).toEqual([line('c', 'three'), line('a', 'other'), line('d', 'four')]);
    expect(kept[0]).toBe(before[2]);
    expect(kept[1]).not.toBe(before[0]);
  });

  it('is the list before where nothing has changed, and a new one where something went', () => {
    const before = [line('a', 'one'), line('b', 'two')];
    expect(keptWhereSame(before, [line('a', 'one'), line('b', 'two')], idOf)).toBe(before);
    expect(keptWhereSame(before, [line('a', 'one')], idOf)).toEqual([line('a', 'one')]);
  });
});
