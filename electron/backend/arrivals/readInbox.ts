import { existsSync } from 'node:fs';
import path from 'node:path';
import * as v from 'valibot';
import type { ArrivedClip } from '../../../engine/arrival/arrival.ts';
import { type ExerciseNames, exerciseNames } from '../../../engine/arrival/nameClues.ts';
import { placeArrivals } from '../../../engine/arrival/placeArrivals.ts';
import type { Catalogue } from '../../../engine/exercises/catalogue.ts';
import type { InboxFile, InboxSession } from '../../contract/inbox.ts';
import type { Context } from '../context/context.ts';
import { type ArrivalRow, choiceOf, listInbox, traineeWorkedOnLast } from '../store/arrivals.ts';
import type { Reading } from '../store/connection.ts';
import { type FootageRow, findFootage } from '../store/footage.ts';
import { listOpenBatches } from '../store/jobs.ts';
import type { Library } from '../store/library.ts';
import { findOpenSession, latestSessionsOf, openSessionsOn, openSessionWhole } from '../store/openSessions.ts';
import { messageOfText } from '../store/storedMessage.ts';
import { listTrainees } from '../store/trainees.ts';
import { listTwins } from '../store/twins.ts';

/** As many as anybody looks through at once; the rest come up as these go. */
const mostListed = 500;

/** What lies in the inbox, with a guess for each file where it goes. */
export type Inbox = { readonly files: readonly InboxFile[]; readonly sessions: readonly InboxSession[] };

/** Reads the inbox and guesses, from names, days and plans, where each of its files goes; the first filmed first. */
export function readInbox(context: Pick<Context, 'catalogue' | 'library'>): Inbox {
  const library = context.library();
  const { reading } = library;
  const rows = listInbox(reading, mostListed);
  const clips = rows.map(clipOf);
  const placements = placeArrivals(clips, {
    trainees: listTrainees(reading).filter(({ archived_at }) => archived_at === null),
    lastUsed: traineeWorkedOnLast(reading),
    sessions: sessionsInQuestion(reading, clips),
    exercises: namesIn(context.catalogue()),
  });
  const rowOf = new Map(rows.map((row) => [row.id, row]));
  const openBatches = listOpenBatches(reading);
  const firstOf = new Map<string, string>();
  const files = placements.flatMap(({ id, ...placement }) => {
    const row = rowOf.get(id);
    if (row === undefined) return [];
    const file = { ...fileOf(library, row, openBatches), placement };
    const sameAs = row.footage_id === null ? undefined : firstOf.get(row.footage_id);
    if (row.footage_id !== null && sameAs === undefined) firstOf.set(row.footage_id, file.name);
    return [{ ...file, sameAs: sameAs ?? null }];
  });
  return { files, sessions: sessionsToOffer(reading, files) };
}

function clipOf(row: ArrivalRow): ArrivedClip {
  return {
    id: row.id,
    name: path.basename(row.path),
    folders: v.parse(v.array(v.string()), JSON.parse(row.folders)),
    recordedAt: row.recorded_at,
    recordedDay: row.recorded_day,
    seenFrom: row.seen_from,
    choice: choiceOf(row),
  };
}

function fileOf(
  { reading, folder }: Library,
  row: ArrivalRow,
  openBatches: ReadonlySet<string>,
): Omit<InboxFile, 'placement' | 'sameAs'> {
  const footage = row.footage_id === null ? undefined : findFootage(reading, row.footage_id);
  const isHere = (name: string | null | undefined): boolean =>
    typeof name === 'string' && existsSync(path.join(folder.pictures, name));
  return {
    arrivalId: row.id,
    name: path.basename(row.path),
    folder: path.dirname(row.path),
    state: row.state === 'waiting' && !openBatches.has(row.batch_id) ? 'stopped' : row.state,
    trouble: row.message === '' ? null : messageOfText(row.message),
    recordedAt: row.recorded_at,
    recordedBy: row.recorded_by,
    durationUs: footage?.duration_us ?? null,
    hasPoster: isHere(footage?.poster_file),
    filmstripPictures: filmstripOf(footage, isHere),
    twins: row.footage_id === null ? [] : listTwins(reading, row.footage_id),
    anyway: choiceOf(row).anyway === true,
  };
}

const filmstripOf = (footage: FootageRow | undefined, isHere: (name: string | null) => boolean): number =>
  footage !== undefined && isHere(footage.filmstrip_file) ? footage.filmstrip_pictures : 0;

/** The sessions of the days that the clips were filmed on or were given to, and those that were chosen. */
function sessionsInQuestion(reading: Reading, clips: readonly ArrivedClip[]) {
  const days = new Set(clips.flatMap(({ recordedDay, choice }) => [recordedDay, choice.date ?? recordedDay]));
  const chosen = new Set(clips.flatMap(({ choice }) => choice.sessionId ?? []));
  const found = [
    ...[...days].flatMap((day) => openSessionsOn(reading, day)),
    ...[...chosen].flatMap((id) => findOpenSession(reading, id) ?? []),
  ];
  return [...new Map(found.map((session) => [session.id, session])).values()].map((session) =>
    openSessionWhole(reading, session),
  );
}

function sessionsToOffer(reading: Reading, files: readonly InboxFile[]): InboxSession[] {
  const owners = files.flatMap(({ placement: { trainee } }) =>
    trainee?.value.kind === 'known' ? [trainee.value.traineeId] : [],
  );
  const named = files.flatMap(({ placement: { session } }) => session?.value.id ?? []);
  const sessions = [
    ...[...new Set(owners)].flatMap((traineeId) => latestSessionsOf(reading, traineeId)),
    ...[...new Set(named)].flatMap((id) => findOpenSession(reading, id) ?? []),
  ];
  return [...new Map(sessions.map((session) => [session.id, session])).values()];
}

const known = new WeakMap<Catalogue, ExerciseNames>();

function namesIn(catalogue: Catalogue): ExerciseNames {
  const names = known.get(catalogue) ?? exerciseNames(catalogue);
  known.set(catalogue, names);
  return names;
}
