// @vitest-environment happy-dom
import { render, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import type { Job } from '../../../electron/contract/jobs.ts';
import { JobsPanel } from '../../../renderer/shared/JobsPanel.tsx';
import { jobsState } from '../../../renderer/state/jobsState.ts';
import { settingsState } from '../../../renderer/state/settingsState.ts';
import { usualSettings } from '../../electron/contract/usualSettings.ts';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const jobOf = (id: string, state: Job['state'], kind: Job['kind'] = 'measure'): Job => ({
  ...{ id, kind, state, title: { id: 'measure', values: { clip: id } }, progress: null, message: null },
  ...{ secondsLeft: null, lineSecondsLeft: null, sessionId: null, clipId: id },
});

const names = (): readonly (string | null)[] =>
  screen.getAllByTestId('job').map((row) => row.querySelector('strong')?.textContent ?? null);

describe('the list of jobs', () => {
  beforeEach(() => {
    startAfresh(jobsState);
    settingsState.setState({ settings: usualSettings });
  });

  it('shows what runs, then the line in its order, which can be changed, paused and left', async () => {
    const user = userEvent.setup();
    const acts = { 'jobs.move': () => changed, 'jobs.cancel': () => changed, 'settings.change': () => changed };
    const page = fakeRackside(acts);
    jobsState.setState({
      jobs: [jobOf('a', 'waiting'), jobOf('b', 'waiting'), jobOf('c', 'running')],
      line: ['b', 'a'],
    });
    render(<JobsPanel />);
    expect(names()).toEqual(['Measure: c', 'Measure: b', 'Measure: a']);
    await user.click(screen.getByRole('button', { name: 'Move up: Measure: a' }));
    await user.click(screen.getByRole('button', { name: 'Move up: Measure: b' }));
    await user.click(screen.getByRole('button', { name: 'Move to the front: Measure: a' }));
    expect(page.askedFor('jobs.move')).toEqual([
      { jobId: 'a', to: 'up' },
      { jobId: 'a', to: 'first' },
    ]);
    await user.click(screen.getByRole('button', { name: 'Cancel: Measure: b' }));
    expect(page.askedFor('jobs.cancel')).toEqual([{ jobId: 'b' }]);
    await user.click(screen.getByRole('button', { name: 'Pause measuring' }));
    expect(page.askedFor('settings.change')).toEqual([{ measuringPaused: true }]);
  });

  it('tries what failed again or puts it out of sight, one or all', async () => {
    const user = userEvent.setup();
    const page = fakeRackside({ 'jobs.retry': () => changed, 'jobs.dismiss': () => changed });
    jobsState.setState({ jobs: [jobOf('a', 'failed'), jobOf('b', 'failed'), jobOf('c', 'done')], line: [] });
    render(<JobsPanel />);
    expect(names()).toEqual(['Measure: a', 'Measure: b']);
    await user.click(screen.getByRole('button', { name: 'Dismiss: Measure: a' }));
    await user.click(screen.getByRole('button', { name: 'Dismiss all' }));
    expect(page.askedFor('jobs.dismiss')).toEqual([{ jobIds: ['a'] }, { jobIds: ['a', 'b'] }]);
    await user.click(screen.getByRole('button', { name: 'Try all again' }));
    expect(page.askedFor('jobs.retry')).toEqual([{ jobId: 'a' }, { jobId: 'b' }]);
  });
});
