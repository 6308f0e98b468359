// @vitest-environment happy-dom
import { cleanup, fireEvent, render, screen, within } from '@testing-library/react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { MoveButtons } from '../../../renderer/base/MoveButtons.tsx';

afterEach(cleanup);

describe('the buttons that move and size by clicks', () => {
  it('moves by a hundredth of the longer side in each direction, and names what it moves', () => {
    const onMove = vi.fn();
    render(<MoveButtons part="Cover 1" picture={{ width: 1080, height: 1920 }} onMove={onMove} />);
    const group = within(screen.getByRole('group', { name: 'Move or resize: Cover 1' }));
    for (const name of ['Left', 'Right', 'Up', 'Down']) fireEvent.click(group.getByRole('button', { name }));
    expect(onMove.mock.calls).toEqual([[{ x: -19, y: 0 }], [{ x: 19, y: 0 }], [{ x: 0, y: -19 }], [{ x: 0, y: 19 }]]);
    expect(group.queryByRole('button', { name: 'Wider' })).toBeNull();
  });

  it('sizes where there is a size to set', () => {
    const onSize = vi.fn();
    render(<MoveButtons part="Crop" picture={{ width: 100, height: 50 }} onMove={() => {}} onSize={onSize} />);
    for (const name of ['Wider', 'Shorter']) fireEvent.click(screen.getByRole('button', { name }));
    expect(onSize.mock.calls).toMatchObject([[{ x: 1 }], [{ y: -1 }]]);
  });
});
