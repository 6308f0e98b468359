// @vitest-environment happy-dom
import { render, screen, waitFor } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import { FirstStartScreen } from '../../../renderer/firstStart/FirstStartScreen.tsx';
import { jobsState } from '../../../renderer/state/jobsState.ts';
import { libraryState } from '../../../renderer/state/libraryState.ts';
import { deskVoice } from '../../../renderer/words/deskVoice.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

beforeEach(() => {
  startAfresh(jobsState);
  startAfresh(libraryState);
  startAfresh(deskVoice);
});

const answers = {
  'library.create': () => ({ jobId: null }),
  'library.state': () => ({ kind: 'open', folder: '', voice: 'self', coach: 'Noor' }) as const,
  'trainees.add': () => ({ traineeId: 't1' }),
  'jobs.list': () => [],
};

describe('the first start', () => {
  it('asks somebody who reviews their own sets for their name once, and puts them on the desk', async () => {
    const user = userEvent.setup();
    const page = fakeRackside(answers);
    render(<FirstStartScreen demoJobId={null} onDemoJob={() => {}} />);
    await user.click(screen.getByRole('radio', { name: /^An empty library/ }));
    await user.click(screen.getByRole('radio', { name: /^Myself/ }));
    await user.type(screen.getByRole('textbox', { name: 'My name' }), ' Noor ');
    await user.click(screen.getByRole('button', { name: 'Start' }));
    await waitFor(() => expect(page.askedFor('trainees.add')).toHaveLength(1));
    expect(page.askedFor('library.create')).toEqual([{ contents: 'empty', voice: 'self', coach: 'Noor' }]);
    expect(page.askedFor('trainees.add')).toEqual([
      { name: 'Noor', goal: 'growth', experience: 'experienced', units: 'kg', minor: false },
    ]);
    await waitFor(() => expect(deskVoice.getState().voice).toBe('self'));
  });

  it('adds nobody for a coach, who adds trainees later', async () => {
    const user = userEvent.setup();
    const page = fakeRackside(answers);
    render(<FirstStartScreen demoJobId={null} onDemoJob={() => {}} />);
    await user.click(screen.getByRole('radio', { name: /^An empty library/ }));
    await user.click(screen.getByRole('button', { name: 'Start' }));
    await waitFor(() => expect(page.askedFor('library.state')).toHaveLength(1));
    expect(page.askedFor('trainees.add')).toEqual([]);
  });
});
