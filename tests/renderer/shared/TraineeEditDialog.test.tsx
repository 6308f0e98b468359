// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, it, vi } from 'vitest';
import { TraineeEditDialog } from '../../../renderer/shared/TraineeEditDialog.tsx';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';
import { traineeOf } from '../harness/summaries.ts';

const mira = traineeOf({ goal: 'growth', experience: 'new', notes: 'Hates split squats.' });

it('changes what a trainee trains with and in which units, and keeps the rest', async () => {
  const page = fakeRackside({ 'trainees.update': () => changed });
  const [onSaved, onClose] = [vi.fn(), vi.fn()];
  render(<TraineeEditDialog trainee={mira} onSaved={onSaved} onClose={onClose} />);
  const user = userEvent.setup();
  await user.selectOptions(screen.getByRole('combobox', { name: 'Units' }), 'Pounds');
  await user.selectOptions(screen.getByRole('combobox', { name: 'Equipment' }), 'In the park, with bars');
  await user.click(screen.getByRole('button', { name: 'Save' }));
  expect(page.askedFor('trainees.update')).toEqual([
    {
      traineeId: 't1',
      name: 'Mira Holt',
      goal: 'growth',
      experience: 'new',
      units: 'lb',
      minor: false,
      equipment: 'park',
      notes: mira.notes,
    },
  ]);
  expect(onSaved).toHaveBeenCalledOnce();
  expect(onClose).toHaveBeenCalledOnce();
});

it('stays open where the change was refused', async () => {
  fakeRackside({});
  const [onSaved, onClose] = [vi.fn(), vi.fn()];
  render(<TraineeEditDialog trainee={{ ...mira, equipment: 'home' }} onSaved={onSaved} onClose={onClose} />);
  const field = screen.getByRole<HTMLSelectElement>('combobox', { name: 'Equipment' });
  expect(field.selectedOptions[0]?.textContent).toBe('At home, without weights');
  await userEvent.setup().click(screen.getByRole('button', { name: 'Save' }));
  expect(onSaved).not.toHaveBeenCalled();
  expect(onClose).not.toHaveBeenCalled();
});
