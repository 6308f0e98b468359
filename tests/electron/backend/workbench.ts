import { cpSync, mkdtempSync, realpathSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import Database from 'better-sqlite3';
import { onTestFinished } from 'vitest';
import { openBackend } from '../../../electron/backend/backend.ts';
import { loadCatalogue } from '../../../electron/backend/catalogue/loadCatalogue.ts';
import type { Backend } from '../../../electron/contract/backend.ts';
import type { Job } from '../../../electron/contract/jobs.ts';
import type { Problem } from '../../../electron/contract/reply.ts';
import type { Params, RequestName, Result } from '../../../electron/contract/requests.ts';
import type { Message } from '../../../engine/message/message.ts';
import { sayAction } from '../../../engine/wording/sayAction.ts';
import { sayProblem } from '../../../engine/wording/sayProblem.ts';

/** The repository: the backend reads its migrations and seeds. */
export const appFolder = path.resolve(import.meta.dirname, '../../..');
export const squatFile = path.join(appFolder, 'seeds/footage/squat-side.mp4');
export const hingeFile = path.join(appFolder, 'seeds/footage/hinge-side.mp4');

/** A folder of the test's own, removed when it ends. */
export function temporaryFolder(): string {
  const folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'rackside-test-')));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}

/** A backend on a folder, closed when the test ends. */
export function backendOn(libraryFolder: string): Backend {
  const backend = openBackend({ libraryFolder, appFolder });
  onTestFinished(() => backend.close());
  return backend;
}

/** A backend with a new, empty library. */
export async function newLibrary(folder = temporaryFolder()): Promise<Backend> {
  const backend = backendOn(folder);
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  return backend;
}

/** The answer to a request that has to succeed. */
export async function ask<N extends RequestName>(backend: Backend, name: N, params: Params<N>): Promise<Result<N>> {
  const reply = await backend.ask(name, params);
  if (reply.ok) return reply.value;
  throw new Error(`${name} was refused (${reply.problem.code}): ${sayProblem(reply.problem.message, 'en')}`);
}

/** The problem of a request that has to be refused, with what it says in English. */
export async function refusal<N extends RequestName>(
  backend: Backend,
  name: N,
  params: Params<N>,
): Promise<Problem & { readonly sentence: string }> {
  const reply = await backend.ask(name, params);
  if (!reply.ok) return { ...reply.problem, sentence: sayProblem(reply.problem.message, 'en') };
  throw new Error(`${name} should have been refused.`);
}

const ended: ReadonlySet<string> = new Set<Job['state']>(['done', 'failed', 'cancelled']);

/** The job once it has ended, whichever way, with what it says of that in English; '' for nothing. */
export async function jobEnd(backend: Backend, jobId: string): Promise<Job & { readonly sentence: string }> {
  const job = await jobWhen(backend, jobId, ({ state }) => ended.has(state));
  return { ...job, sentence: job.message === null ? '' : sayProblem(job.message, 'en') };
}

/** The job once it meets a condition. */
export function jobWhen(backend: Backend, jobId: string, meets: (job: Job) => boolean): Promise<Job> {
  return new Promise((resolve, reject) => {
    const settle = (job: Job | undefined) => {
      if (job?.id !== jobId || !meets(job)) return;
      stop();
      resolve(job);
    };
    const stop = backend.onEvent((event) => {
      if (event.name === 'jobChanged') settle(event.data.job);
    });
    ask(backend, 'jobs.list', {}).then((jobs) => settle(jobs.find((job) => job.id === jobId)), reject);
  });
}

/** A session with one exercise entry, without clips. */
export async function newSession(backend: Backend, exercise = 'back-squat') {
  const trainee = { name: 'Mira Holt', goal: 'growth', experience: 'new', units: 'kg', minor: false } as const;
  const { traineeId } = await ask(backend, 'trainees.add', trainee);
  const { sessionId } = await ask(backend, 'sessions.add', { traineeId, title: 'Legs', date: '2026-03-04' });
  const { entryId } = await ask(backend, 'entries.add', { sessionId, exercise });
  return { traineeId, sessionId, entryId };
}

/** A session with clips of real footage in its one entry. */
export async function sessionWithClips(backend: Backend, files: readonly string[] = [squatFile]) {
  const session = await newSession(backend);
  const { sessionId, entryId } = session;
  const { jobIds } = await ask(backend, 'clips.import', { sessionId, entryId, view: 'side', paths: [...files] });
  const clipIds: string[] = [];
  for (const jobId of jobIds) {
    const job = await jobEnd(backend, jobId);
    if (job.clipId === null) throw new Error(`The import failed: ${JSON.stringify(job.message)}`);
    clipIds.push(job.clipId);
  }
  const [clipId = ''] = clipIds;
  return { ...session, clipIds, clipId };
}

/** The name of an action in English. */
export const nameInWords = (name: Message | null): string | null =>
  name === null ? null : sayAction(name, 'en', loadCatalogue(appFolder, 3));

/** What undo and redo would do next in a session, in English. */
export async function historyOf(backend: Backend, sessionId: string) {
  const { undo, redo } = (await ask(backend, 'review.get', { sessionId })).history;
  return { undo: nameInWords(undo), redo: nameInWords(redo) };
}

type Prepared = { readonly folder: string } & Awaited<ReturnType<typeof sessionWithClips>>;

/** Bringing clips in takes longer than most tests of what is done with them: of each set of clips there is one library that is copied. */
const templates = new Map<string, Promise<Prepared>>();

async function template(files: readonly string[]): Promise<Prepared> {
  const folder = realpathSync(mkdtempSync(path.join(tmpdir(), 'rackside-template-')));
  process.on('exit', () => rmSync(folder, { recursive: true, force: true }));
  const backend = openBackend({ libraryFolder: folder, appFolder });
  await ask(backend, 'library.create', { contents: 'empty', voice: 'coach', coach: 'Ada Quill' });
  const session = await sessionWithClips(backend, files);
  await backend.close();
  return { folder, ...session };
}

/** A closed library of the test's own with one session and its clips. */
export async function preparedLibrary(files: readonly string[] = [squatFile]): Promise<Prepared> {
  const key = files.join('\n');
  const made = templates.get(key) ?? template(files);
  templates.set(key, made);
  const { folder, ...session } = await made;
  return { folder: copyOf(folder), ...session };
}

/** A backend on a library with one session and its clips. */
export async function libraryWithClips(files?: readonly string[]) {
  const { folder, ...session } = await preparedLibrary(files);
  return { backend: backendOn(folder), folder, ...session };
}

/** A copy of a closed library's folder. */
export function copyOf(folder: string): string {
  const copy = temporaryFolder();
  cpSync(folder, copy, { recursive: true });
  return copy;
}

const judgedTables = [
  'trainee',
  'session',
  'entry',
  'clip',
  'rep',
  'flag',
  'flag_rep',
  'tick',
  'letter_edit',
  'letter_paragraph',
  'letter_left_out',
  'letter_order',
  'drawing',
  'cover',
  'clip_set_up',
  'suggestion_answer',
];

/** Everything that acts can change, row by row in a fixed order. */
export function dump(folder: string): string {
  const database = new Database(path.join(folder, 'rackside.sqlite'), { readonly: true });
  try {
    const tables = judgedTables.map((table) => {
      const rows = database.prepare(`SELECT * FROM ${table}`).all();
      return [table, ...rows.map((row) => JSON.stringify(row)).sort()].join('\n');
    });
    return tables.join('\n');
  } finally {
    database.close();
  }
}
