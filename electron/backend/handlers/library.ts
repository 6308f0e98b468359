import { randomUUID } from 'node:crypto';
import type { Context } from '../context/context.ts';
import { judgeKept } from '../handover/package/keepHandover.ts';
import { listAllHandovers } from '../store/handovers.ts';
import { verifyDatabase } from '../store/verify.ts';
import { verifyFiles } from '../store/verifyFiles.ts';
import { verifySummaries } from '../summaries/verifySummaries.ts';
import type { Handler } from './handler.ts';

export const getLibraryState: Handler<'library.state'> = (context) => context.libraryState();

export const createNewLibrary: Handler<'library.create'> = (context, { contents, voice, coach }) => {
  context.createLibrary({ voice, coach: coach.trim().slice(0, 200) });
  context.emit({ name: 'libraryChanged', data: {} });
  if (contents === 'empty') return { jobId: null };
  return { jobId: addDemoJob(context) };
};

const addDemoJob = (context: Context): string =>
  context.jobs.add({
    kind: 'demo',
    title: 'Demo session',
    sessionId: null,
    task: { do: 'demo', sessionId: randomUUID() },
  });

/** The sample session beside what the library holds already. */
export const addDemo: Handler<'library.addDemo'> = (context) => {
  context.library();
  return { jobId: addDemoJob(context) };
};

export const verifyLibrary: Handler<'library.verify'> = async (context) => {
  const library = context.library();
  const { findings, clips, sessions, footage } = verifyDatabase(library.reading);
  const kept: string[] = [];
  for (const row of listAllHandovers(library.reading)) {
    const finding = await judgeKept(library.folder, row);
    if (finding !== null) kept.push(finding);
  }
  const all = [
    ...findings,
    ...verifySummaries(library, context),
    ...(await verifyFiles(library.folder, footage)),
    ...kept,
  ];
  return { sound: all.length === 0, findings: all, clips, sessions };
};
