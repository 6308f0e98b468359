import { existsSync } from 'node:fs';
import * as v from 'valibot';
import type { Backend, BackendSettings } from '../contract/backend.ts';
import type { AnyEvent } from '../contract/events.ts';
import type { LibraryState } from '../contract/library.ts';
import { ProblemError, type Reply } from '../contract/reply.ts';
import { type CheckedParams, type RequestName, type Result, requests } from '../contract/requests.ts';
import { FolderWatch } from './arrivals/folderWatch.ts';
import { appVersion } from './catalogue/appVersion.ts';
import { judgingDataOf } from './catalogue/loadCatalogue.ts';
import { tellChanged } from './context/acting.ts';
import type { Context } from './context/context.ts';
import { checkParams, problemOf } from './context/problems.ts';
import type { Handler } from './handlers/handler.ts';
import { handlers } from './handlers/handlers.ts';
import { measureAllByItself, measureSessionByItself } from './jobs/measureByItself.ts';
import { JobQueue, type JobTools } from './jobs/queue.ts';
import { runJob } from './jobs/runJob.ts';
import { errorFacts, type Log, noLog, openLog } from './log/log.ts';
import { logIfSlow, logSlowQueries } from './log/slowness.ts';

import { findMediaTools, type MediaTools, mediaToolFacts } from './media/tools/mediaTools.ts';
import { emptyBin } from './store/emptyBin.ts';
import type { JobRow } from './store/jobs.ts';
import { createLibrary, type Library, openLibrary, readLibraryFacts } from './store/library.ts';
import { discardOrphans } from './store/narrations.ts';
import { readSettings } from './store/settings.ts';
import { forgetDamagedSummaries, listWithoutSummary } from './store/summaries.ts';
import { keepSummaries, renewStaleSummaries, renewSummaries } from './summaries/keepSummaries.ts';

type Slot =
  | { readonly kind: 'none' }
  | { readonly kind: 'open'; readonly library: Library }
  | { readonly kind: 'failed'; readonly problem: ProblemError };

/**
 * Opens the backend on a library folder. Never throws: a folder without a library, or with one that can't be
 * opened, is told by `library.state`, and requests that need the library answer with the reason.
 */
export function openBackend(settings: BackendSettings): Backend {
  const listeners = new Set<(event: AnyEvent) => void>();
  let slot = tryOpen(settings);
  let closing: Promise<void> | undefined;
  let tools: Promise<MediaTools> | undefined;
  let renewing: Promise<void> = Promise.resolve();
  const judging = judgingDataOf(settings.appFolder);
  let log = noLog;

  const emit = (event: AnyEvent) => {
    for (const listener of listeners) tell(listener, event);
    if (event.name === 'settingsChanged') followFolder();
    // Clips come into sessions in many ways; each of them tells of its session.
    if (event.name === 'sessionChanged' && event.data.summary !== null) {
      const { id, measured, clips } = event.data.summary;
      if (measured < clips && closing === undefined) tell(() => measureSessionByItself(context, id), event);
    }
  };
  const library = () => openLibraryOf(slot);
  const keepInOrder = (opened: Library): void => {
    log = openLog(opened.folder.log);
    logSlowQueries(opened, log);
    log.info('opened', { version: appVersion(settings.appFolder) });
    const { closedToOthers } = opened;
    if (closedToOthers > 0) log.info('closed to other users of the machine', { files: closedToOthers });
    keepSummaries(opened, judging);
    forgetDamagedSummaries(opened.writing);
    renewSummaries(opened, judging, listWithoutSummary(opened.reading));
  };
  const renewAll = async (opened: Library): Promise<void> => {
    try {
      const onRenewed = (sessionId: string) => tellChanged({ library, emit }, sessionId);
      await renewStaleSummaries(opened, judging, { onRenewed, isStopped: () => closing !== undefined });
      await emptyBin(opened, new Date(), () => closing !== undefined);
      await discardOrphans(opened, new Date());
    } catch (error) {
      log.error('summaries not renewed', errorFacts(error));
      problemOf(error, 'renewing the summaries');
    }
  };
  /** Where nobody sits at a window, nothing comes in by itself. */
  const followFolder = (): void => {
    if (settings.host === 'window' && slot.kind === 'open') watch.follow();
  };
  const jobs = new JobQueue({
    library,
    emit,
    run: (job, tools) => runLogged(context, log, job, tools),
    isPaused: () => readSettings(library().reading).measuringPaused,
  });
  const watch = new FolderWatch({ library, emit, jobs, log: () => log });
  const context: Context = {
    settings,
    library,
    libraryState: () => {
      if (slot.kind === 'failed' && closing === undefined) openOnceMore();
      return stateOf(slot);
    },
    createLibrary: (facts) => {
      if (slot.kind === 'failed') throw slot.problem;
      if (slot.kind === 'open') {
        throw new ProblemError('conflict', 'isOpenAlready');
      }
      const created = createLibrary(settings.libraryFolder, settings.appFolder, facts);
      slot = { kind: 'open', library: created };
      keepInOrder(created);
      return created;
    },
    mediaTools: async () => {
      tools ??= findMediaTools().then((found) => {
        log.info('media tools', mediaToolFacts(found));
        return found;
      });
      const { folder } = library();
      return { ...(await tools), temporary: folder.temporary };
    },
    ...judging,
    jobs,
    watchedFolder: () => watch.watched(),
    summariesRenewed: () => renewing,
    emit,
  };
  const begin = (opened: Library): void => {
    keepInOrder(opened);
    jobs.resume();
    followFolder();
    renewing = renewAll(opened);
    const isStopped = () => closing !== undefined;
    void renewing.then(() => measureAllByItself(context, isStopped)).catch((error) => problemOf(error, 'the jobs'));
  };
  /** What stood in the way may be gone: a lock, a missing disk, a folder that nobody may write into. */
  const openOnceMore = (): void => {
    slot = tryOpen(settings);
    if (slot.kind === 'failed') return;
    if (slot.kind === 'open') begin(slot.library);
    emit({ name: 'libraryChanged', data: {} });
  };
  if (slot.kind === 'open') begin(slot.library);

  const close = async () => {
    await Promise.all([watch.close(), jobs.close(), renewing]);
    if (slot.kind === 'open') slot.library.close();
    log.info('closed');
    log = noLog;
    slot = { kind: 'none' };
    listeners.clear();
  };
  return {
    ask: async (name, params) => {
      if (closing) {
        return { ok: false, problem: { code: 'backend-gone', message: { id: 'closing', values: {} } } };
      }
      const startMs = performance.now();
      const reply = await answer(context, log, name, params);
      // A name that is no request's could be anything.
      if (Object.hasOwn(requests, name)) logIfSlow(log, name, performance.now() - startMs);
      return reply;
    },
    onEvent: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    close: () => {
      closing ??= close();
      return closing;
    },
  };
}

/** Answers one request, whatever happens: the only place where errors become data. */
async function answer<N extends RequestName>(
  context: Context,
  log: Log,
  name: N,
  params: unknown,
): Promise<Reply<Result<N>>> {
  try {
    if (!Object.hasOwn(requests, name)) {
      throw new ProblemError('bad-request', 'unknownRequest');
    }
    const schemas: { readonly params: v.GenericSchema; readonly result: v.GenericSchema } = requests[name];
    const checked = checkParams(name, schemas.params, params) as CheckedParams<N>;
    const handler: Handler<N> = handlers[name];
    return { ok: true, value: v.parse(schemas.result, await handler(context, checked)) as Result<N> };
  } catch (error) {
    if (isFault(error)) log.error('request failed', { name, ...errorFacts(error) });
    return { ok: false, problem: problemOf(error, name) };
  }
}

async function runLogged(context: Context, log: Log, job: JobRow, tools: JobTools): Promise<void> {
  try {
    await runJob(context, job, { ...tools, log });
  } catch (error) {
    if (isFault(error)) log.error('job failed', { kind: job.kind, ...errorFacts(error) });
    throw error;
  }
}

/** Whether an error is more than a refusal that the person was told of. */
const isFault = (error: unknown): boolean =>
  !(error instanceof ProblemError) || error.problem.code === 'disk' || error.problem.code === 'internal';

/** A listener that fails must not make an act that is committed look refused. */
function tell(listener: (event: AnyEvent) => void, event: AnyEvent): void {
  try {
    listener(event);
  } catch (error) {
    problemOf(error, `telling of ${event.name}`);
  }
}

function tryOpen(settings: BackendSettings): Slot {
  try {
    assertThere(settings);
    const library = openLibrary(settings.libraryFolder, settings.appFolder);
    return library ? { kind: 'open', library } : { kind: 'none' };
  } catch (error) {
    const problem = problemOf(error, 'opening the library');
    return { kind: 'failed', problem: ProblemError.of(problem, { cause: error }) };
  }
}

/** Throws `not-found` where a library that was chosen before lies on a disk that is not connected, or is moved. */
function assertThere({ libraryFolder, library }: BackendSettings): void {
  if (library !== 'known' || existsSync(libraryFolder)) return;
  throw new ProblemError('not-found', 'libraryAway', { folder: libraryFolder });
}

function openLibraryOf(slot: Slot): Library {
  switch (slot.kind) {
    case 'open':
      return slot.library;
    case 'failed':
      throw slot.problem;
    case 'none':
      throw new ProblemError('library-missing', 'noLibraryYet');
  }
}

function stateOf(slot: Slot): LibraryState {
  switch (slot.kind) {
    case 'open':
      return { kind: 'open', folder: slot.library.folder.root, ...readLibraryFacts(slot.library.reading) };
    case 'failed':
      return { kind: 'failed', message: slot.problem.problem.message };
    case 'none':
      return { kind: 'none' };
  }
}
