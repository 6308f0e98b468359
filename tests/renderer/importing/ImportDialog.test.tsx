// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { statusState } from '../../../renderer/bridge/statusState.ts';
import { ImportDialog } from '../../../renderer/importing/ImportDialog.tsx';
import { catalogueState } from '../../../renderer/state/catalogueState.ts';
import { deskState } from '../../../renderer/state/deskState.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { reviewAnswer } from '../harness/reviewAnswer.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf } from '../harness/summaries.ts';

const withSquats = () => reviewAnswer([{ id: 'e1', exercise: 'back-squat', clips: [], flags: [], ticks: [] }]);

const importing = () =>
  fakeRackside(
    { 'review.get': withSquats, 'clips.import': ({ paths }) => ({ jobIds: paths.map((path) => `job ${path}`) }) },
    { 'clips.choose': () => ({ paths: ['/films/third.mov'] }) },
  );

/** The exercises of the session, once they are read and the list is open. */
async function inSession(): Promise<HTMLElement> {
  await userEvent.click(screen.getByRole('combobox', { name: 'Exercise' }));
  return screen.findByRole('group', { name: 'In this session' });
}

describe('the import dialog', () => {
  beforeEach(() => {
    startAfresh(catalogueState);
    startAfresh(deskState);
    startAfresh(statusState);
    catalogueState.setState({ catalogue: shipped });
    deskState.setState({
      sessions: [
        summaryOf({ id: 'received', traineeName: 'From Afar', readOnly: true }),
        summaryOf({ id: 'look', traineeName: 'Looked Again', secondLookOf: 's1' }),
        summaryOf({ id: 's1' }),
        summaryOf({ id: 's2', traineeName: 'Jo Berg', title: 'Week 3' }),
      ],
    });
  });

  it('offers the sessions of one’s own that are neither received nor second looks', async () => {
    importing();
    render(<ImportDialog sessionId={null} entryId={null} paths={['/films/set 1.mov']} onClose={() => {}} />);
    const sessions = await screen.findByRole('combobox', { name: 'Session' });
    expect(
      within(sessions)
        .getAllByRole('option')
        .map(({ textContent }) => textContent),
    ).toEqual(['Mira Holt, 4 Mar 2026', 'Jo Berg, 4 Mar 2026, Week 3']);
    await inSession();
  });

  it('offers the second look that is open beside them', async () => {
    importing();
    render(<ImportDialog sessionId="look" entryId={null} paths={[]} onClose={() => {}} />);
    const sessions = await screen.findByRole('combobox', { name: 'Session' });
    expect(sessions).toHaveProperty('value', 'look');
    await inSession();
  });

  it('reads the session that led here when it is on no page of the desk yet', async () => {
    const page = fakeRackside({
      'review.get': withSquats,
      'desk.session': () => summaryOf({ id: 'old', traineeName: 'Long Ago' }),
    });
    render(<ImportDialog sessionId="old" entryId={null} paths={[]} onClose={() => {}} />);
    await screen.findByRole('option', { name: 'Long Ago, 4 Mar 2026' });
    expect(screen.getByRole('combobox', { name: 'Session' })).toHaveProperty('value', 'old');
    expect(page.askedFor('desk.session')).toEqual([{ sessionId: 'old' }]);
    await inSession();
  });

  it('imports files into an exercise of the session, and closes when they are queued', async () => {
    const user = userEvent.setup();
    const onClose = vi.fn();
    const page = importing();
    render(<ImportDialog sessionId="s1" entryId={null} paths={['C:\\films\\set 1.mov']} onClose={onClose} />);
    const add = screen.getByRole('button', { name: 'Import' });
    expect(add.hasAttribute('disabled')).toBe(true);
    await user.click(screen.getByRole('button', { name: 'Choose files' }));
    expect(screen.getByTestId('chosen-files').textContent).toBe('2 clips: set 1.mov, third.mov');
    const known = await inSession();
    await user.click(within(known).getByRole('option'));
    expect(screen.queryByText(/From here you can judge/)).toBeNull();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Filmed from' }), 'Front');
    expect(screen.getByText(/^From here you can judge: eccentric tempo, pauses.*; not: depth, bar path/)).toBeTruthy();
    await user.selectOptions(screen.getByRole('combobox', { name: 'Filmed from' }), 'Side');
    await user.click(add);
    expect(page.askedFor('clips.import')).toEqual([
      { sessionId: 's1', entryId: 'e1', view: 'side', paths: ['C:\\films\\set 1.mov', '/films/third.mov'] },
    ]);
    expect(onClose).toHaveBeenCalledOnce();
  });

  it('imports files as a new exercise of another session, whose exercises it then reads', async () => {
    const user = userEvent.setup();
    const page = importing();
    render(<ImportDialog sessionId="s1" entryId={null} paths={['/films/set 1.mov']} onClose={() => {}} />);
    await user.selectOptions(await screen.findByRole('combobox', { name: 'Session' }), 'Jo Berg, 4 Mar 2026, Week 3');
    await user.type(screen.getByRole('combobox', { name: 'Exercise' }), 'bankdruecken{Enter}');
    await user.click(screen.getByRole('button', { name: 'Import' }));
    expect(page.askedFor('review.get')).toEqual([{ sessionId: 's1' }, { sessionId: 's2' }]);
    expect(page.askedFor('clips.import')).toEqual([
      { sessionId: 's2', exercise: 'bench-press', view: null, paths: ['/films/set 1.mov'] },
    ]);
  });

  it('asks for the exercise again once the session is another', async () => {
    const user = userEvent.setup();
    importing();
    render(<ImportDialog sessionId="s1" entryId="e1" paths={['/films/set 1.mov']} onClose={() => {}} />);
    await screen.findByDisplayValue('Back squat');
    expect(screen.getByRole('button', { name: 'Import' }).hasAttribute('disabled')).toBe(false);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Session' }), 'Jo Berg, 4 Mar 2026, Week 3');
    expect(screen.getByRole('combobox', { name: 'Exercise' })).toHaveProperty('value', '');
    expect(screen.getByRole('button', { name: 'Import' }).hasAttribute('disabled')).toBe(true);
  });

  it('stays open with its reason in the status line when the files were not imported', async () => {
    const user = userEvent.setup();
    const onClose = vi.fn();
    fakeRackside({ 'review.get': withSquats });
    render(<ImportDialog sessionId="s1" entryId="e1" paths={['/films/set 1.mov']} onClose={onClose} />);
    await screen.findByDisplayValue('Back squat');
    await user.click(screen.getByRole('button', { name: 'Import' }));
    expect(statusState.getState().notice).toBe('No answer to clips.import in this test.');
    expect(onClose).not.toHaveBeenCalled();
  });
});
