// @vitest-environment happy-dom
import { cleanup, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, expect, it } from 'vitest';
import type { Equipment } from '../../../engine/exercises/equipment.ts';
import { EquipmentField, wordsOfEquipment } from '../../../renderer/base/EquipmentField.tsx';

afterEach(cleanup);

type HeldProps = { readonly first: Equipment | null; readonly onSet: (value: Equipment | null) => void };

function Held({ first, onSet }: HeldProps) {
  const [value, setValue] = useState(first);
  const change = (next: Equipment | null): void => {
    onSet(next);
    setValue(next);
  };
  return <EquipmentField label="Equipment" unstated="Not stated" value={value} onChange={change} />;
}

/** The field, and what it was set to. */
function shownField(first: Equipment | null) {
  Reflect.set(globalThis, 'IS_REACT_ACT_ENVIRONMENT', true);
  const set: (Equipment | null)[] = [];
  render(<Held first={first} onSet={(value) => set.push(value)} />);
  return { user: userEvent.setup(), set };
}

const ticked = (): (string | null)[] =>
  screen.queryAllByRole('checkbox', { checked: true }).map((box) => box.closest('label')?.textContent ?? null);

it('takes a usual place, or none', async () => {
  const { user, set } = shownField(null);
  const field = screen.getByRole('combobox', { name: 'Equipment' });
  await user.selectOptions(field, 'A full gym');
  await user.selectOptions(field, 'Not stated');
  expect(set).toEqual(['fullGym', null]);
  expect(screen.queryAllByRole('checkbox')).toEqual([]);
});

it('goes on item by item from the place that was chosen', async () => {
  const { user, set } = shownField('homeWithDumbbells');
  await user.selectOptions(screen.getByRole('combobox', { name: 'Equipment' }), 'Pick items');
  expect(ticked()).toEqual(expect.arrayContaining(['Dumbbells', 'Bench', 'Bands']));
  expect(ticked()).not.toContain('Cable stack');
  await user.click(screen.getByRole('checkbox', { name: 'Bands' }));
  await user.click(screen.getByRole('checkbox', { name: 'Pull-up bar' }));
  expect(ticked()).not.toContain('Bands');
  expect(set.at(-1)).toEqual(expect.arrayContaining(['dumbbells', 'bench', 'pullUpBar']));
});

it('says places and items in words', () => {
  expect(wordsOfEquipment('barAndBench')).toBe('barbell, rack and bench');
  expect(wordsOfEquipment(['bench', 'dumbbells', 'band'])).toBe('bench, dumbbells and bands');
  expect(wordsOfEquipment([])).toBe('nothing');
});
