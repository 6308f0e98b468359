import type { InboxFile, InboxSession } from '../../electron/contract/inbox.ts';
import type { Trainee } from '../../electron/contract/trainees.ts';
import type { Choice } from '../../engine/arrival/arrival.ts';
import { views } from '../../engine/exercises/exercise.ts';
import { plainWords, type SearchedCatalogue, searchExercises } from '../../engine/exercises/searchExercises.ts';
import { sayViewName } from '../../engine/wording/sayView.ts';
import { day } from '../base/figures.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayInbox } from '../words/sayInbox.ts';
import type { PickerOption } from './CellPicker.tsx';
import type { ChoiceColumn } from './inboxColumns.ts';

/** What the choices are made of. */
export type OptionSource = {
  /** Those who are archived are no choice. */
  readonly trainees: readonly (Trainee & { readonly archived?: boolean })[];
  readonly sessions: readonly InboxSession[];
  readonly catalogue: SearchedCatalogue;
  /** The files that the choice is for. */
  readonly files: readonly InboxFile[];
};

const newOne = 'new:';
const onDay = 'day:';
const notStated = 'none';
/** The choice of a day that is typed. */
export const otherDay = 'other';

/** What can be chosen in a column, for what is typed. */
export function optionsFor(column: ChoiceColumn, source: OptionSource, typed: string): readonly PickerOption[] {
  switch (column) {
    case 'trainee':
      return traineeOptions(source, typed);
    case 'session':
      return matching(sessionOptions(source), typed);
    case 'exercise':
      return searchExercises(source.catalogue, typed).map(({ id, name }) => ({ value: id, name }));
    case 'view':
      return matching(viewOptions(), typed);
    case 'load':
      return [];
  }
}

/** What an option says of its files. */
export function choiceOf(column: ChoiceColumn, value: string): Choice {
  switch (column) {
    case 'trainee':
      return value.startsWith(newOne) ? { newTrainee: value.slice(newOne.length) } : { traineeId: value };
    case 'session':
      return value.startsWith(onDay) ? { date: value.slice(onDay.length) } : { sessionId: value };
    case 'exercise':
      return { exercise: value };
    case 'view':
      return { view: views.find((view) => view === value) ?? null };
    case 'load':
      return { loadKg: loadOf(value) };
  }
}

/** The load that is written, with a point or a comma; null for none. */
function loadOf(written: string): number | null {
  const load = Number(written.trim().replace(',', '.'));
  return written.trim() === '' || !Number.isFinite(load) || load < 0 || load > 1000 ? null : load;
}

/** Options of which a word begins with each word typed. */
function matching(options: readonly PickerOption[], typed: string): readonly PickerOption[] {
  const wanted = plainWords(typed);
  return options.filter(({ name }) => {
    const words = plainWords(name);
    return wanted.every((part) => words.some((word) => word.startsWith(part)));
  });
}

function traineeOptions({ trainees, files }: OptionSource, typed: string): readonly PickerOption[] {
  const known = matching(
    trainees.filter(({ archived }) => archived !== true).map(({ id, name }) => ({ value: id, name })),
    typed,
  );
  const folders = files.flatMap(({ folder }) => folder.split(/[\\/]/).at(-1) ?? []);
  const names = typed.trim() === '' ? folders : [typed.trim()];
  const isKnown = (name: string): boolean =>
    trainees.some((one) => plainWords(one.name).join() === plainWords(name).join());
  const fresh = [...new Set(names)].filter((name) => name !== '' && !isKnown(name)).slice(0, 3);
  return [...known, ...fresh.map((name) => ({ value: `${newOne}${name}`, name: sayInbox('newTrainee', { name }) }))];
}

function sessionOptions({ sessions, files }: OptionSource): readonly PickerOption[] {
  const owners = new Set(
    files.map(({ placement: { trainee } }) => (trainee?.value.kind === 'known' ? trainee.value.traineeId : '')),
  );
  const own = owners.size === 1 ? sessions.filter(({ traineeId }) => owners.has(traineeId)) : [];
  const days = [...new Set(files.flatMap(({ placement: { session } }) => session?.value.date ?? []))].toSorted();
  const taken = new Set(own.map(({ date }) => date));
  return [
    ...own.map(({ id, date, title }) => ({
      value: id,
      name: [day(date), title].filter((part) => part !== '').join(', '),
    })),
    ...days
      .filter((date) => !taken.has(date))
      .map((date) => ({ value: `${onDay}${date}`, name: sayInbox('newOn', { day: day(date) }) })),
    { value: otherDay, name: sayInbox('otherDay') },
  ];
}

const viewOptions = (): readonly PickerOption[] => [
  ...views.map((view) => ({ value: view, name: sayViewName(view, deskLanguage.getState().language) })),
  { value: notStated, name: sayInbox('notStated') },
];
