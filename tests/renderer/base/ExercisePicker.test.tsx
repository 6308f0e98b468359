// @vitest-environment happy-dom
import { cleanup, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { ExercisePicker } from '../../../renderer/base/ExercisePicker.tsx';
import { shipped } from '../../seeds/shippedCatalogue.ts';

function Picker({ onChoose }: { readonly onChoose: (value: string) => void }) {
  const [chosen, setChosen] = useState('back-squat');
  return (
    <ExercisePicker
      catalogue={shipped}
      inSession={[{ value: 'entry:e1', exercise: 'dip' }]}
      chosen={chosen}
      onChoose={(value) => {
        setChosen(value);
        onChoose(value);
      }}
    />
  );
}

const input = () => screen.getByRole('combobox', { name: 'Exercise' });
const options = (): (string | null)[] => screen.getAllByRole('option').map(({ textContent }) => textContent);

describe('the exercise picker', () => {
  afterEach(cleanup);

  it('shows the exercise chosen, and no list until it is asked for', async () => {
    render(<Picker onChoose={() => {}} />);
    expect(input()).toHaveProperty('value', 'Back squat');
    expect(screen.queryByRole('option')).toBeNull();
    await userEvent.tab();
    await userEvent.keyboard('{ArrowDown}');
    expect(input().getAttribute('aria-expanded')).toBe('true');
    const library = within(screen.getByRole('listbox', { name: 'Exercises' }));
    expect(library.getAllByRole('option')).toHaveLength(shipped.exercises.length + 1);
    expect(library.getAllByRole('group')[0]?.getAttribute('aria-label')).toBe('In this session');
  });

  it('picks by keyboard what a German name answers', async () => {
    const onChoose = vi.fn();
    render(<Picker onChoose={onChoose} />);
    await userEvent.type(input(), 'kurzhantel bankdrücken');
    expect(options()).toContain('Dumbbell bench press');
    await userEvent.keyboard('{Enter}');
    expect(onChoose.mock.calls).toEqual([['dumbbell-bench-press']]);
    expect(input()).toHaveProperty('value', 'Dumbbell bench press');
  });

  it('offers the exercise of the session before the library’s, and moves along with the arrows', async () => {
    const onChoose = vi.fn();
    render(<Picker onChoose={onChoose} />);
    await userEvent.type(input(), 'dip');
    const [first, second] = screen.getAllByRole('option');
    expect([first?.textContent, second?.textContent]).toEqual(['Dip', 'Dip']);
    expect(input().getAttribute('aria-activedescendant')).toBe(first?.id);
    await userEvent.keyboard('{ArrowDown}');
    expect(input().getAttribute('aria-activedescendant')).toBe(second?.id);
    await userEvent.keyboard('{ArrowUp}{Enter}');
    expect(onChoose.mock.calls).toEqual([['entry:e1']]);
  });

  it('leaves the choice as it was on Escape', async () => {
    const onChoose = vi.fn();
    render(<Picker onChoose={onChoose} />);
    await userEvent.type(input(), 'dip{Escape}');
    expect(input()).toHaveProperty('value', 'Back squat');
    expect(onChoose).not.toHaveBeenCalled();
  });

  it('lists near spellings, and says so where there are none', async () => {
    render(<Picker onChoose={() => {}} />);
    await userEvent.type(input(), 'bakc squat');
    expect(options()[0]).toBe('Back squat');
    await userEvent.type(input(), ' of the year 3000');
    expect(screen.getByText('No exercise matches')).toBeTruthy();
  });
});
