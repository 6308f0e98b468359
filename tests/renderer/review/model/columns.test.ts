import { expect, it } from 'vitest';
import { type CellMove, columnsOfClip, moveCell } from '../../../../renderer/review/model/columns.ts';
import type { Column } from '../../../../renderer/state/cursorState.ts';
import { clip, reps } from '../../../engine/reviews.ts';

const criteria = ['depth', 'pauses'];
const columns = [...columnsOfClip(clip({ reps: reps(2) })), ...columnsOfClip(clip({ id: 'b', reps: reps(1) }))];

const after = (criterion: string, clipId: string, rep: Column['rep'], ...moves: readonly CellMove[]): string => {
  let at = { criterion, column: { clipId, rep } as Column };
  for (const move of moves) at = moveCell(criteria, columns, at, move) ?? at;
  return `${at.criterion} ${at.column.clipId} ${at.column.rep}`;
};

it('moves by one rep and one criterion', () => {
  expect(after('depth', 'a', 'set', 'right')).toBe('depth a 1');
  expect(after('depth', 'a', 1, 'down', 'left')).toBe('pauses a set');
});

it('goes on into the next set', () => {
  expect(after('depth', 'a', 2, 'right')).toBe('depth b set');
  expect(after('depth', 'b', 'set', 'left')).toBe('depth a 2');
});

it('stops at the edges', () => {
  expect(after('depth', 'a', 'set', 'left', 'up')).toBe('depth a set');
  expect(after('pauses', 'b', 1, 'right', 'down')).toBe('pauses b 1');
});

it('goes to the whole set and to the last rep of the same set', () => {
  expect(after('depth', 'b', 1, 'first')).toBe('depth b set');
  expect(after('depth', 'a', 'set', 'last')).toBe('depth a 2');
});

it('begins in the corner when it is nowhere, and stays nowhere on an empty card', () => {
  const nowhere = { criterion: null, column: null };
  expect(moveCell(criteria, columns, nowhere, 'left')).toEqual({ criterion: 'depth', column: columns[0] });
  expect(moveCell([], [], nowhere, 'right')).toBeNull();
});
