// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, expect, it } from 'vitest';
import type { BinItem } from '../../../electron/contract/bin.ts';
import { BinScreen } from '../../../renderer/bin/BinScreen.tsx';
import { catalogueState } from '../../../renderer/state/catalogueState.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const removedAt = '2026-03-05T08:00:00.000Z';
const file: BinItem = {
  ...{ kind: 'file', id: 'f1', sessionId: null, removedAt, daysLeft: 12, traineeName: '', title: '', date: null },
  ...{ exercise: null, clipName: 'squat.mp4', clips: 1, poster: null },
};
const session: BinItem = {
  ...file,
  ...{
    kind: 'session',
    id: 's1',
    sessionId: 's1',
    traineeName: 'Mira Holt',
    date: '2026-03-04',
    clipName: null,
    clips: 3,
  },
};

let asked: ReturnType<typeof fakeRackside>['asked'];
beforeEach(() => {
  startAfresh(catalogueState);
  ({ asked } = fakeRackside({
    'bin.list': () => [session, file],
    'bin.delete': () => ({}),
    'bin.empty': () => ({}),
  }));
});

const deletions = () => asked.filter(({ name }) => name === 'bin.delete' || name === 'bin.empty');

it('asks before anything is deleted for good, says what goes and that it can’t be undone', async () => {
  render(<BinScreen />);
  await userEvent.click(await screen.findByRole('button', { name: 'Delete now: From the inbox: squat.mp4' }));
  expect(screen.getByRole('dialog').textContent).toMatch(/original file stays where it is.*can’t be undone/);
  expect(deletions()).toEqual([]);
  await userEvent.click(within(screen.getByRole('dialog')).getByRole('button', { name: 'Delete for good' }));
  expect(deletions()).toMatchObject([{ name: 'bin.delete', params: { kind: 'file', id: 'f1' } }]);
});

it('empties all of it at once, once that is confirmed', async () => {
  render(<BinScreen />);
  await userEvent.click(await screen.findByRole('button', { name: 'Empty the bin' }));
  expect(screen.getByRole('dialog').textContent).toContain('This deletes all 2 things with 4 clips');
  await userEvent.click(screen.getByRole('button', { name: 'Cancel' }));
  expect(deletions()).toEqual([]);
  await userEvent.click(screen.getByRole('button', { name: 'Empty the bin' }));
  await userEvent.click(screen.getByRole('button', { name: 'Delete for good' }));
  expect(deletions()).toMatchObject([{ name: 'bin.empty' }]);
});
