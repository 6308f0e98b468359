// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { DeskScreen } from '../../../renderer/desk/DeskScreen.tsx';
import { deskState } from '../../../renderer/state/deskState.ts';
import { libraryState } from '../../../renderer/state/libraryState.ts';
import { deskVoice } from '../../../renderer/words/deskVoice.ts';
import { changed, fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf, traineeOf } from '../harness/summaries.ts';

const myself = traineeOf({ name: 'Noor' });
const answers = (mine: boolean) => ({
  'desk.sessions': ({ list }: { readonly list?: string }) => ({
    sessions: mine && list === 'due' ? [summaryOf({ traineeName: 'Noor', title: 'Lower body, week 3' })] : [],
    next: null,
  }),
  'desk.trainees': () => [myself],
  'jobs.list': () => [],
  'trainees.update': () => changed,
  'sessions.add': () => ({ sessionId: 's2' }),
});

beforeEach(() => {
  startAfresh(deskState);
  libraryState.setState({ library: { kind: 'open', folder: '', voice: 'self', coach: 'Noor' } });
  deskVoice.getState().choose('self');
});

afterEach(() => {
  startAfresh(libraryState);
  startAfresh(deskVoice);
});

describe('the desk of somebody who reviews their own sets', () => {
  it('tells their sessions by title, not by their own name', async () => {
    fakeRackside(answers(true));
    render(<DeskScreen />);
    expect(await screen.findByRole('button', { name: 'Lower body, week 3' })).toBeTruthy();
    expect(screen.queryByText('Noor')).toBeNull();
    expect(screen.queryByText('Trainee')).toBeNull();
  });

  it('adds a session without asking who trained', async () => {
    const user = userEvent.setup();
    const page = fakeRackside(answers(false));
    render(<DeskScreen />);
    await user.click(await screen.findByRole('button', { name: 'Add a session' }));
    const dialog = within(screen.getByRole('dialog'));
    expect(dialog.queryByRole('combobox')).toBeNull();
    await user.type(dialog.getByRole('textbox', { name: 'Title' }), 'Pulls');
    await user.click(dialog.getByRole('button', { name: 'Add session' }));
    expect(page.askedFor('sessions.add')).toMatchObject([{ traineeId: 't1', title: 'Pulls' }]);
  });

  it('changes what is known of them, the name as it is until they change it', async () => {
    const user = userEvent.setup();
    const page = fakeRackside(answers(false));
    render(<DeskScreen />);
    const [aboutMe] = await screen.findAllByRole('button', { name: 'About me' });
    if (aboutMe !== undefined) await user.click(aboutMe);
    const dialog = within(screen.getByRole('dialog'));
    expect(dialog.getByRole<HTMLInputElement>('textbox', { name: 'My name' }).value).toBe('Noor');
    await user.selectOptions(dialog.getByRole('combobox', { name: 'Units' }), 'Pounds');
    await user.click(dialog.getByRole('button', { name: 'Save' }));
    expect(page.askedFor('trainees.update')).toMatchObject([{ traineeId: 't1', units: 'lb' }]);
  });
});
