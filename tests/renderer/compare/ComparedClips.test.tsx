// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { CompareScreen } from '../../../renderer/compare/CompareScreen.tsx';
import { compareDesk } from '../../../renderer/compare/compareDesk.ts';
import { tablesState } from '../../../renderer/state/clipState.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { reviewAnswer } from '../harness/reviewAnswer.ts';
import { depthFlag, measuresAnswer, squatClip, squatEntry, thirtyFps } from '../harness/reviewBench.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const dates = { c1: '2026-03-04', c2: '2026-02-11', c3: '2026-01-14' };
type Id = keyof typeof dates;
const isId = (id: string): id is Id => Object.hasOwn(dates, id);

/** Three clips of the lift, one a month; the newest is on the left. */
function showScreen(): void {
  startAfresh(tablesState);
  fakeRackside({
    'review.get': ({ sessionId }) => {
      const id = isId(sessionId) ? sessionId : 'c1';
      const clip = squatClip({ id, loadKg: id === 'c1' ? 100 : 90 });
      const flags = id === 'c2' ? [depthFlag({ clip: id, reps: [1], note: 'A hand short.' })] : [];
      const answer = reviewAnswer([squatEntry({ clips: [clip], flags })]);
      return { ...answer, review: { ...answer.review, session: { ...answer.review.session, date: dates[id] } } };
    },
    'clips.alike': () =>
      (['c1', 'c2', 'c3'] as const).map((id) => ({
        ...{ clipId: id, sessionId: id, name: 'Squat', date: dates[id], exercise: 'back-squat' },
      })),
    'clips.frameTable': () => ({ table: thirtyFps, playback: thirtyFps }),
    'measures.get': () => measuresAnswer(),
  });
  render(<CompareScreen sessionId="c1" clipId="c1" rep={1} />);
}

it('says of each side when it was, the load and the rep, and what was remarked then', async () => {
  showScreen();
  const left = within(await screen.findByRole('region', { name: 'Left' }));
  expect(left.getByText(/^4 Mar 2026 · .* · 100 kg · rep 1$/)).toBeTruthy();
  expect(left.getByText('No flags on this rep.')).toBeTruthy();
  const right = within(await screen.findByRole('region', { name: 'Right' }));
  expect(right.getByText(/^11 Feb 2026 · .* · 90 kg · rep 1$/)).toBeTruthy();
  expect(right.getByText('A hand short.')).toBeTruthy();
});

it('has the clips over the months in a row, oldest first, and puts any of them on either side', async () => {
  const user = userEvent.setup();
  showScreen();
  const row = within(await screen.findByRole('list', { name: 'Clips of this lift over the months' }));
  expect(row.getAllByRole('listitem').map((one) => one.textContent)).toEqual([
    '14 Jan 2026LeftRight',
    '11 Feb 2026LeftRight',
    '4 Mar 2026LeftRight',
  ]);
  await user.click(row.getByRole('button', { name: '14 Jan 2026, Squat: Right' }));
  const right = within(await screen.findByRole('region', { name: 'Right' }));
  expect(await right.findByText(/^14 Jan 2026/)).toBeTruthy();
});

it('mirrors one side, and goes by time instead of by phase', async () => {
  const user = userEvent.setup();
  showScreen();
  const right = within(await screen.findByRole('region', { name: 'Right' }));
  await user.click(right.getByRole('button', { name: 'Mirror: Right' }));
  expect(compareDesk.getState().mirrored).toEqual({ left: false, right: true });
  await user.click(screen.getByRole('button', { name: 'By phase' }));
  expect(screen.getByRole('button', { name: 'By time' })).toBeTruthy();
});
