// @vitest-environment happy-dom
import { fireEvent, render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { SessionTable } from '../../../renderer/desk/SessionTable.tsx';
import { catalogueState } from '../../../renderer/state/catalogueState.ts';
import { screenState } from '../../../renderer/state/screenState.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf } from '../harness/summaries.ts';

const rowOf = (name: RegExp): HTMLElement => screen.getByRole('row', { name });
const cellsOf = (name: RegExp): readonly (string | null)[] =>
  within(rowOf(name))
    .getAllByRole('cell')
    .map(({ textContent }) => textContent);

/** Drags files over a row and lets go, as a browser does: a row that doesn't say it takes them sees no drop. */
function dropOn(row: HTMLElement, files: readonly File[]): void {
  const dataTransfer = { files, types: ['Files'] };
  const isRefused = fireEvent.dragOver(row, { dataTransfer });
  if (!isRefused) fireEvent.drop(row, { dataTransfer });
}

describe('the table of sessions', () => {
  beforeEach(() => {
    startAfresh(catalogueState);
    startAfresh(screenState);
    catalogueState.setState({ catalogue: shipped });
    fakeRackside({});
  });

  it('tells of each session its day, exercises, clips, flags, grade and how much was looked at', () => {
    const sessions = [
      summaryOf({ exercises: ['back-squat', 'unknown-lift'], coverage: 0.5, provisional: true, byHand: true }),
      summaryOf({
        id: 's2',
        traineeName: 'Jo Berg',
        title: 'Week 3',
        mark: '',
        coverage: 0,
        exercises: [],
        readOnly: true,
      }),
    ];
    render(<SessionTable sessions={sessions} onDropClips={() => {}} onAddClips={() => {}} />);
    const squat = shipped.exercises.find(({ id }) => id === 'back-squat')?.name;
    expect(cellsOf(/Mira Holt/).slice(0, 6)).toEqual([
      'Judged',
      '4 Mar 2026',
      '',
      `${squat}, unknown-lift`,
      '2',
      'B+ provisional set by hand50% looked at, 3 flags',
    ]);
    expect(cellsOf(/Jo Berg/).slice(3, 6)).toEqual(['none yet', '2', '–0% looked at, 3 flags']);
    expect(rowOf(/Jo Berg/).textContent).toContain('Received, read only');
  });

  it('asks for the clips of a session that has none, and opens one that was received', async () => {
    const onAddClips = vi.fn();
    const bare = { clips: 0, state: 'new', mark: '', cameAt: '' } as const;
    const sessions = [
      summaryOf(bare),
      summaryOf({ ...bare, id: 's2', traineeName: 'Jo Berg', readOnly: true }),
      summaryOf({ id: 's3', traineeName: 'Ida Lund', finished: true }),
    ];
    render(<SessionTable sessions={sessions} onDropClips={() => {}} onAddClips={onAddClips} />);
    await userEvent.click(screen.getByRole('button', { name: 'Mira Holt' }));
    expect(onAddClips).toHaveBeenCalledWith('s1');
    expect(cellsOf(/Ida Lund/)[0]).toBe('Finished, no letter');
    await userEvent.click(screen.getByRole('button', { name: /^Jo Berg/ }));
    expect(onAddClips).toHaveBeenCalledTimes(1);
    expect(screenState.getState().screen).toEqual({ kind: 'review', sessionId: 's2' });
  });

  it('opens a session, or its trainee’s history, by the keyboard', async () => {
    const user = userEvent.setup();
    render(<SessionTable sessions={[summaryOf()]} onDropClips={() => {}} onAddClips={() => {}} />);
    await user.tab();
    await user.keyboard('{Enter}');
    expect(screenState.getState().screen).toEqual({ kind: 'review', sessionId: 's1' });
    await user.tab();
    expect(document.activeElement).toBe(screen.getByRole('button', { name: 'History: Mira Holt' }));
    await user.keyboard('{Enter}');
    expect(screenState.getState().screen).toEqual({ kind: 'trainee', traineeId: 't1' });
  });

  it('takes clips for a session of one’s own, dropped or chosen, and none for one that was received', async () => {
    const user = userEvent.setup();
    const [onDropClips, onAddClips] = [vi.fn(), vi.fn()];
    const sessions = [summaryOf(), summaryOf({ id: 's2', traineeName: 'Jo Berg', readOnly: true })];
    render(<SessionTable sessions={sessions} onDropClips={onDropClips} onAddClips={onAddClips} />);
    await user.click(screen.getByRole('button', { name: 'Import clips: Mira Holt, 4 Mar 2026' }));
    expect(onAddClips.mock.calls).toEqual([['s1']]);
    expect(within(rowOf(/Jo Berg/)).queryByRole('button', { name: /Import clips/ })).toBeNull();
    dropOn(rowOf(/Mira Holt/), [new File([], 'set 1.mov')]);
    expect(onDropClips.mock.calls).toEqual([['s1', ['/dropped/set 1.mov']]]);
    dropOn(rowOf(/Jo Berg/), [new File([], 'set 1.mov')]);
    expect(onDropClips).toHaveBeenCalledOnce();
  });
});
