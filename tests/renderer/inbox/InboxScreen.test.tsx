// @vitest-environment happy-dom
import { render, screen, within } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { beforeEach, describe, expect, it } from 'vitest';
import type { InboxFile } from '../../../electron/contract/inbox.ts';
import { InboxScreen } from '../../../renderer/inbox/InboxScreen.tsx';
import { catalogueState } from '../../../renderer/state/catalogueState.ts';
import { deskState } from '../../../renderer/state/deskState.ts';
import { inboxState } from '../../../renderer/state/inboxState.ts';
import { libraryState } from '../../../renderer/state/libraryState.ts';
import { shipped } from '../../seeds/shippedCatalogue.ts';
import { type Answers, changed, fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';

const mira = {
  id: 'mira',
  name: 'Mira Holt',
  goal: 'growth',
  experience: 'new',
  units: 'kg',
  minor: false,
  names: 'full',
  notes: '',
  archived: false,
  damaged: false,
} as const;

const fileOf = (number: number, more: Partial<InboxFile> = {}): InboxFile => ({
  arrivalId: `a${number}`,
  name: `IMG_${number}.mov`,
  folder: '/films/Mira Holt',
  state: 'read',
  trouble: null,
  recordedAt: '2026-11-28T17:00:00.000Z',
  recordedBy: 'film',
  durationUs: 65_900_000,
  hasPoster: true,
  filmstripPictures: 0,
  twins: [],
  sameAs: null,
  anyway: false,
  placement: {
    trainee: { value: { kind: 'known', traineeId: 'mira' }, basis: 'folder' },
    session: { value: { id: null, date: '2026-11-28' }, basis: 'recorded' },
    exercise: null,
    view: null,
    loadKg: null,
  },
  ...more,
});

const withExercise = (file: InboxFile): InboxFile => ({
  ...file,
  placement: { ...file.placement, exercise: { value: 'deadlift', basis: 'plan' } },
});

const desk = { sessions: [], next: null };

function showing(files: readonly InboxFile[], more: Answers = {}) {
  const page = fakeRackside({
    'inbox.get': () => ({ files: [...files], more: 0, bytes: 0, sessions: [], watch: null }),
    'inbox.choose': () => changed,
    'inbox.remove': () => changed,
    'desk.sessions': () => desk,
    'desk.trainees': () => [mira],
    'jobs.list': () => [],
    ...more,
  });
  render(<InboxScreen />);
  return page;
}

const cell = async (name: string, column: string): Promise<HTMLElement> => {
  const row = (await screen.findByText(name, { selector: '.inbox-name' })).closest('tr');
  const found = row?.querySelector<HTMLElement>(`[data-column="${column}"]`);
  if (!found) throw new Error(`${name} has no ${column}.`);
  return found;
};

describe('the inbox', () => {
  beforeEach(() => {
    startAfresh(catalogueState);
    startAfresh(deskState);
    startAfresh(inboxState);
    startAfresh(libraryState);
    catalogueState.setState({ catalogue: shipped });
  });

  it('begins on the first gap, and takes what is typed there', async () => {
    const user = userEvent.setup();
    const page = showing([withExercise(fileOf(1)), fileOf(2)]);
    const gap = await cell('IMG_2.mov', 'exercise');
    expect(document.activeElement).toBe(gap);
    await user.keyboard('squ{Enter}');
    expect(page.askedFor('inbox.choose')).toEqual([{ arrivalIds: ['a2'], choice: { exercise: 'back-squat' } }]);
  });

  it('changes all that are selected, and takes a choice back', async () => {
    const user = userEvent.setup();
    const page = showing([fileOf(1), fileOf(2), fileOf(3)]);
    await cell('IMG_1.mov', 'exercise');
    await user.keyboard('{Shift>}{ArrowDown}{/Shift}{ArrowRight}{Enter}fro{Enter}');
    await user.keyboard('{ArrowRight}82,5{Enter}{Delete}');
    const arrivalIds = ['a1', 'a2'];
    expect(page.askedFor('inbox.choose')).toEqual([
      { arrivalIds, choice: { view: 'front' } },
      { arrivalIds, choice: { loadKg: 82.5 } },
      { arrivalIds, forget: ['load'] },
    ]);
  });

  it('brings in what is ready as it stands on screen, and leaves gaps and duplicates', async () => {
    const user = userEvent.setup();
    const twin = { sessionId: 's9', traineeName: 'Mira Holt', date: '2026-11-21', exercise: 'deadlift' };
    const files = [withExercise(fileOf(1)), fileOf(2), withExercise(fileOf(3, { twins: [twin] }))];
    const page = showing(files, { 'inbox.bringIn': () => ({ sessionIds: ['s1'], clipIds: ['c1'] }) });
    expect(await screen.findByText('In the library: Mira Holt, 21 Nov 2026')).toBeTruthy();
    await user.keyboard('{Control>}{Enter}{/Control}');
    expect(page.askedFor('inbox.bringIn')).toEqual([
      {
        clips: [
          {
            arrivalId: 'a1',
            trainee: { kind: 'known', traineeId: 'mira' },
            sessionId: null,
            date: '2026-11-28',
            exercise: 'deadlift',
            view: null,
            loadKg: null,
          },
        ],
      },
    ]);
  });

  it('offers the folder’s name as a new trainee where nobody has it', async () => {
    const user = userEvent.setup();
    const page = showing([fileOf(1, { folder: 'C:\\films\\Ada Lund' })]);
    await user.click(await cell('IMG_1.mov', 'trainee'));
    const names = within(screen.getByRole('listbox')).getAllByRole('option');
    expect(names.map(({ textContent }) => textContent)).toEqual(['Mira Holt', 'New: Ada Lund']);
    await user.keyboard('{ArrowDown}{Enter}');
    expect(page.askedFor('inbox.choose')).toEqual([{ arrivalIds: ['a1'], choice: { newTrainee: 'Ada Lund' } }]);
  });

  it('names no trainee in a self-review', async () => {
    libraryState.setState({ library: { kind: 'open', folder: '/l', voice: 'self', coach: 'Mira Holt' } });
    showing([fileOf(1)]);
    await cell('IMG_1.mov', 'exercise');
    expect(screen.queryByRole('columnheader', { name: 'Trainee' })).toBeNull();
    expect(screen.queryByText('Mira Holt')).toBeNull();
  });

  it('removes clips by key on the clip itself, and offers them back', async () => {
    const user = userEvent.setup();
    const page = showing([fileOf(1), fileOf(2)]);
    await cell('IMG_1.mov', 'exercise');
    await user.keyboard('{Home}{Delete}');
    expect(page.askedFor('inbox.remove')).toEqual([{ arrivalIds: ['a1'] }]);
    expect(await screen.findByRole('button', { name: 'Put back' })).toBeTruthy();
  });
});
