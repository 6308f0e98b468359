// @vitest-environment happy-dom
import { act, render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, test } from 'vitest';
import { SessionWait } from '../../../renderer/shared/SessionWait.tsx';
import { reviewState } from '../../../renderer/state/reviewState.ts';
import { screenState } from '../../../renderer/state/screenState.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';

test('a session that can’t be read leaves a way back to the desk', async () => {
  // It answers nothing, so the session is refused.
  fakeRackside({});
  screenState.getState().go({ kind: 'review', sessionId: 's1' });
  render(<SessionWait words="Opening the session…" />);
  expect(screen.getByRole('main').textContent).toBe('Opening the session…');
  await act(() => reviewState.getState().open('s1'));
  await screen.findByRole('heading', { name: 'This session could not be opened' });
  await userEvent.click(screen.getByRole('button', { name: 'Back to the desk' }));
  expect(screenState.getState().screen).toEqual({ kind: 'desk' });
});
