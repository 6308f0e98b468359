// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, it, vi } from 'vitest';
import type { Equipment } from '../../../../engine/exercises/equipment.ts';
import { SessionDialog } from '../../../../renderer/review/session/ReviewHead.tsx';
import { changed, fakeRackside } from '../../harness/fakeRackside.ts';
import { reviewAnswer } from '../../harness/reviewAnswer.ts';

/** What is saved for a day's equipment after one was chosen. */
async function savedAfter(choice: string, day?: Equipment): Promise<unknown> {
  const page = fakeRackside({ 'sessions.update': () => changed });
  const { review } = reviewAnswer([]);
  const session = { ...review.session, ...(day !== undefined && { equipment: day }) };
  const whole = { ...review, session, trainee: { ...review.trainee, equipment: 'home' as const } };
  render(<SessionDialog sessionId="s1" review={{ ...whole, entries: [] }} onClose={vi.fn()} />);
  const user = userEvent.setup();
  await user.selectOptions(screen.getByRole('combobox', { name: 'Equipment that day' }), choice);
  await user.click(screen.getByRole('button', { name: 'Save' }));
  return page.askedFor('sessions.update');
}

it('states what was at hand on the day', async () => {
  expect(await savedAfter('A full gym')).toMatchObject([{ sessionId: 's1', equipment: 'fullGym' }]);
});

it('goes back to what the trainee usually has, and says what that is', async () => {
  expect(await savedAfter('As usual: at home, without weights', ['barbell'])).toMatchObject([{ equipment: null }]);
});
