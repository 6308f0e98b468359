// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { equalSets, type Plan } from '../../../../engine/review/plan.ts';
import { PlanDialog } from '../../../../renderer/review/session/PlanDialog.tsx';
import { entry, review } from '../../../engine/reviews.ts';
import { shipped } from '../../../seeds/shippedCatalogue.ts';
import { changed, fakeRackside } from '../../harness/fakeRackside.ts';

/** The dialog, opened for a plan. */
function openedWith(plan: Plan | undefined, units: 'kg' | 'lb' = 'kg', painNote = '') {
  const page = fakeRackside({ 'entries.update': () => changed });
  const onClose = vi.fn();
  const { plan: _, ...rest } = entry();
  const planned = { ...rest, ...(plan && { plan }) };
  const whole = review(planned);
  render(
    <PlanDialog
      entry={planned}
      review={{
        ...whole,
        trainee: { ...whole.trainee, units },
        session: { ...whole.session, painNote },
      }}
      catalogue={shipped}
      onClose={onClose}
    />,
  );
  const saved = () => page.askedFor('entries.update');
  return { user: userEvent.setup(), onClose, saved };
}

const field = (name: string | RegExp): HTMLInputElement => screen.getByRole('textbox', { name });

describe('the plan of an exercise', () => {
  it('is two figures for the usual case, the first of them under the cursor', async () => {
    const { user, onClose, saved } = openedWith(undefined);
    expect(document.activeElement).toBe(field('Sets'));
    await user.keyboard('3{Tab}8{Enter}');
    expect(saved()).toEqual([{ entryId: 'e1', plan: equalSets({ sets: 3, reps: 8 }) }]);
    expect(onClose).toHaveBeenCalledOnce();
  });

  it('stands under the cautions: pain that was noted comes before any plan', () => {
    openedWith(undefined, 'kg', 'My right knee hurts');
    const cautions = screen.getByRole('complementary', { name: 'Cautions' });
    expect(cautions.textContent).toContain('Pain noted: “My right knee hurts”');
  });

  it('is edited set by set: rows are copied, changed and removed', async () => {
    const { user, saved } = openedWith(equalSets({ sets: 2, reps: 10, loadKg: 20 }));
    await user.click(screen.getByRole('button', { name: 'Set by set…' }));
    await user.clear(field('Reps, set 2'));
    await user.type(field('Reps, set 2'), '15');
    await user.clear(field('Load in kg, set 2'));
    await user.type(field('Load in kg, set 2'), '12,5');
    await user.click(screen.getByRole('button', { name: 'Add a set' }));
    expect(document.activeElement).toBe(field('Reps, set 3'));
    await user.click(screen.getByRole('checkbox', { name: 'Body weight, set 3' }));
    expect(field('Load in kg, set 3').disabled).toBe(true);
    await user.click(screen.getByRole('button', { name: 'Copy set 1' }));
    expect(document.activeElement).toBe(field('Reps, set 2'));
    await user.click(screen.getByRole('button', { name: 'Remove set 1' }));
    await user.click(screen.getByRole('button', { name: 'Save plan' }));
    expect(saved()).toEqual([
      {
        entryId: 'e1',
        plan: {
          sets: [
            { reps: 10, loadKg: 20 },
            { reps: 15, loadKg: 12.5 },
            { reps: 15, loadKg: 0 },
          ],
        },
      },
    ]);
  });

  it('opens row by row where the sets differ, and can make them all alike again', async () => {
    const { user, saved } = openedWith({
      sets: [
        { reps: 5, loadKg: 100 },
        { reps: 8, loadKg: 80 },
      ],
    });
    expect(field('Reps, set 2').value).toBe('8');
    await user.click(screen.getByRole('button', { name: 'Make all like the first' }));
    expect([field('Sets').value, field('Reps per set').value, field('Load in kg').value]).toEqual(['2', '5', '100']);
    await user.click(screen.getByRole('button', { name: 'Save plan' }));
    expect(saved()).toEqual([{ entryId: 'e1', plan: equalSets({ sets: 2, reps: 5, loadKg: 100 }) }]);
  });

  it('says which row and field is wrong, points at it, and saves nothing', async () => {
    const { user, onClose, saved } = openedWith({ sets: [{ reps: 5 }, { reps: 8 }] });
    await user.clear(field('Reps, set 2'));
    await user.click(screen.getByRole('button', { name: 'Save plan' }));
    const alert = screen.getByRole('alert');
    expect(alert.textContent).toBe('Set 2: Enter a whole number of reps from 1 to 500. Nothing was changed.');
    expect(field('Reps, set 2').getAttribute('aria-describedby')).toBe(alert.id);
    expect(field('Reps, set 1').getAttribute('aria-invalid')).toBeNull();
    expect(saved()).toEqual([]);
    expect(onClose).not.toHaveBeenCalled();
    await user.type(field('Reps, set 2'), '9');
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('is typed and shown in pounds where the trainee uses pounds', async () => {
    const { user, saved } = openedWith(equalSets({ sets: 3, reps: 5, loadKg: 61.2 }), 'lb');
    expect(field('Load in lb').value).toBe('135');
    await user.clear(field('Load in lb'));
    await user.type(field('Load in lb'), '45');
    await user.click(screen.getByRole('button', { name: 'Save plan' }));
    // 45 lb × 0.45359237 kg.
    expect(saved()).toEqual([{ entryId: 'e1', plan: equalSets({ sets: 3, reps: 5, loadKg: 20.41165665 }) }]);
  });

  it('is gone when all its fields are emptied', async () => {
    const { user, saved } = openedWith(equalSets({ sets: 3, reps: 5 }));
    await user.clear(field('Sets'));
    await user.clear(field('Reps per set'));
    await user.click(screen.getByRole('button', { name: 'Save plan' }));
    expect(saved()).toEqual([{ entryId: 'e1', plan: null }]);
  });
});
