import type { InboxFile, InboxSession } from '../../electron/contract/inbox.ts';
import type { Trainee } from '../../electron/contract/trainees.ts';
import type { SearchedCatalogue } from '../../engine/exercises/searchExercises.ts';
import type { InboxMessageId } from '../../engine/wording/english/desk/inbox.ts';
import { sayViewName } from '../../engine/wording/sayView.ts';
import { day, plain } from '../base/figures.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayInbox } from '../words/sayInbox.ts';
import type { ChoiceColumn } from './inboxColumns.ts';

/** What names are looked up in. */
export type PlacementNames = {
  readonly trainees: readonly Trainee[];
  readonly sessions: readonly InboxSession[];
  readonly catalogue: Pick<SearchedCatalogue, 'exercises'>;
};

type Basis = NonNullable<InboxFile['placement'][keyof InboxFile['placement']]>['basis'];

/** A guess in words: what it says, and what it rests on in short and in full; null where nothing is known. */
export type SaidGuess = { readonly value: string; readonly basis: string; readonly why: string };

const whys = {
  chosen: 'restsOnChosen',
  folder: 'restsOnFolder',
  fileName: 'restsOnFileName',
  only: 'restsOnOnly',
  lastUsed: 'restsOnLastUsed',
  recorded: 'restsOnRecorded',
  plan: 'restsOnPlan',
  before: 'restsOnBefore',
  joints: 'restsOnJoints',
} as const satisfies Readonly<Record<Basis, InboxMessageId>>;

const said = (value: string, basis: Basis): SaidGuess => ({
  value,
  basis: sayInbox(basis),
  why: sayInbox(whys[basis]),
});

/** The guess of a column in words. */
export function sayGuess(column: ChoiceColumn, { placement }: InboxFile, names: PlacementNames): SaidGuess | null {
  const { trainee, session, exercise, view, loadKg } = placement;
  switch (column) {
    case 'trainee':
      return trainee && said(ownerName(trainee.value, names.trainees), trainee.basis);
    case 'session':
      return session && said(sessionName(session.value, names.sessions), session.basis);
    case 'exercise':
      return (
        exercise &&
        said(names.catalogue.exercises.find(({ id }) => id === exercise.value)?.name ?? exercise.value, exercise.basis)
      );
    case 'view':
      return (
        view &&
        said(
          view.value === null ? sayInbox('notStated') : sayViewName(view.value, deskLanguage.getState().language),
          view.basis,
        )
      );
    case 'load':
      return loadKg && said(loadKg.value === null ? sayInbox('notStated') : plain(loadKg.value), loadKg.basis);
  }
}

type Owner = NonNullable<InboxFile['placement']['trainee']>['value'];

const ownerName = (owner: Owner, trainees: readonly Trainee[]): string =>
  owner.kind === 'new'
    ? sayInbox('newTrainee', { name: owner.name })
    : (trainees.find(({ id }) => id === owner.traineeId)?.name ?? '');

function sessionName(
  { id, date }: { readonly id: string | null; readonly date: string },
  sessions: readonly InboxSession[],
): string {
  if (id === null) return sayInbox('newSession', { day: day(date) });
  const title = sessions.find((one) => one.id === id)?.title ?? '';
  return title === '' ? day(date) : `${day(date)}, ${title}`;
}
