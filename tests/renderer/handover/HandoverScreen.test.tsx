// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, expect, it } from 'vitest';
import { HandoverScreen } from '../../../renderer/handover/HandoverScreen.tsx';
import { deskState } from '../../../renderer/state/deskState.ts';
import { handoverState } from '../../../renderer/state/handoverState.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf, traineeOf } from '../harness/summaries.ts';

const newest = { session: summaryOf({ id: 'newest' }), last: null, due: true };
const old = { session: summaryOf({ id: 'old', date: '2019-03-04' }), last: null, due: true };

beforeEach(() => {
  startAfresh(deskState);
  startAfresh(handoverState);
  fakeRackside({
    'desk.sessions': () => ({ sessions: [newest.session], next: 'more' }),
    'desk.trainees': () => [traineeOf()],
    'jobs.list': () => [],
    'handover.sessions': () => ({ sessions: [newest], next: 'more' }),
    'handover.session': () => old,
  });
});

it('chooses the session whose letter led here, though it is on no page yet', async () => {
  render(<HandoverScreen sessionIds={['old']} from="old" />);
  await screen.findByRole('button', { name: 'Hand over 1 session…' });
  expect(screen.getByRole('checkbox', { name: 'Hand over: Mira Holt, 4 Mar 2019' })).toHaveProperty('checked', true);
  expect(screen.getByRole('checkbox', { name: 'Hand over: Mira Holt, 4 Mar 2026' })).toHaveProperty('checked', false);
});

it('chooses a session by a click on its box’s label, which lies over the whole row', async () => {
  render(<HandoverScreen sessionIds={['old']} from="old" />);
  await screen.findByRole('button', { name: 'Hand over 1 session…' });
  const box = screen.getByRole('checkbox', { name: 'Hand over: Mira Holt, 4 Mar 2026' });
  const label = box.closest('label.row-pick');
  if (label === null) throw new Error('The box has no label.');
  await userEvent.click(label);
  expect(box).toHaveProperty('checked', true);
});

it('chooses what is due where no session led here, and says that there may be more', async () => {
  render(<HandoverScreen sessionIds={null} from={null} />);
  await screen.findByRole('button', { name: 'Hand over 1 session…' });
  expect(screen.getByText('at least 1 session due')).toBeTruthy();
  expect(screen.getByRole('button', { name: 'Show more sessions' })).toBeTruthy();
});
