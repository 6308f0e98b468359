import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type InboxColumn, inboxColumns } from '../../../renderer/inbox/inboxColumns.ts';
import {
  type Grid,
  kept,
  moved,
  noGrid,
  placed,
  rangeTo,
  targets,
  toggled,
} from '../../../renderer/inbox/inboxGrid.ts';

const shape = { ids: ['a', 'b', 'c', 'd'], columns: inboxColumns };
const at = (id: string, column: InboxColumn = 'exercise', selected: readonly string[] = []): Grid => ({
  cursor: { id, column },
  anchor: null,
  selected: new Set(selected),
});

describe('the cursor of the inbox', () => {
  it('moves by cells as far as there are any', () => {
    expect(moved(at('a'), shape, { rows: 1 }).cursor).toEqual({ id: 'b', column: 'exercise' });
    expect(moved(at('d'), shape, { rows: 10 }).cursor).toEqual({ id: 'd', column: 'exercise' });
    expect(moved(at('a', 'load'), shape, { across: 1 }).cursor).toEqual({ id: 'a', column: 'load' });
    expect(moved(noGrid, { ids: [], columns: inboxColumns }, { rows: 1 })).toEqual(noGrid);
  });

  it('selects the rows it passes with Shift, from where it began', () => {
    const down = moved(moved(at('b'), shape, { rows: 1, extend: true }), shape, { rows: 1, extend: true });
    expect([...down.selected]).toEqual(['b', 'c', 'd']);
    const up = moved(moved(down, shape, { rows: -2, extend: true }), shape, { rows: -1, extend: true });
    expect([...up.selected]).toEqual(['a', 'b']);
    expect([...rangeTo(at('d'), shape, { id: 'b', column: 'file' }).selected]).toEqual(['b', 'c', 'd']);
  });

  it('leaves the selection alone without Shift', () => {
    expect([...moved(at('a', 'exercise', ['c']), shape, { rows: 1 }).selected]).toEqual(['c']);
  });
});

describe('what a change counts for', () => {
  it('is the selection with the cursor in it, else the cursor’s row alone', () => {
    expect(targets(at('b', 'exercise', ['c', 'b']), shape.ids)).toEqual(['b', 'c']);
    expect(targets(at('a', 'exercise', ['c', 'b']), shape.ids)).toEqual(['a']);
    expect(targets(noGrid, shape.ids)).toEqual([]);
  });

  it('is over once another row is clicked', () => {
    expect([...placed(at('b', 'exercise', ['b', 'c']), { id: 'c', column: 'load' }).selected]).toEqual(['b', 'c']);
    expect([...placed(at('b', 'exercise', ['b', 'c']), { id: 'a', column: 'load' }).selected]).toEqual([]);
  });
});

describe('rows that come and go', () => {
  it('leave the cursor on its row, or on the one in its place', () => {
    expect(kept(at('b'), shape.ids, ['x', 'a', 'b']).cursor?.id).toBe('b');
    expect(kept(at('b'), shape.ids, ['a', 'c', 'd']).cursor?.id).toBe('c');
    expect(kept(at('d'), shape.ids, ['a', 'b', 'c']).cursor?.id).toBe('c');
    expect(kept(at('d'), shape.ids, []).cursor).toBeNull();
  });

  it('never leave a selected row that is gone', () => {
    fc.assert(
      fc.property(fc.subarray(shape.ids), fc.subarray(shape.ids), (selected, left) => {
        const now = kept(at('a', 'file', selected), shape.ids, left);
        expect([...now.selected].every((id) => left.includes(id))).toBe(true);
      }),
    );
  });

  it('are selected once and given back by the same key', () => {
    expect([...toggled(at('a'), 'b').selected]).toEqual(['b']);
    expect([...toggled(toggled(at('a'), 'b'), 'b').selected]).toEqual([]);
  });
});
