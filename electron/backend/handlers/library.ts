import { randomUUID } from 'node:crypto';
import { verifyFiles } from '../files/verifyFiles.ts';

import { verifyDatabase } from '../store/index.ts';
import type { Handler } from './handler.ts';

export const getLibraryState: Handler<'library.state'> = (context) => context.libraryState();

export const createNewLibrary: Handler<'library.create'> = (context, { contents, voice, coach }) => {
  context.createLibrary({ voice, coach: coach.trim().slice(0, 200) });
  context.emit({ name: 'libraryChanged', data: {} });
  if (contents === 'empty') return { jobId: null };
  return {
    jobId: context.jobs.add({
      kind: 'demo',
      title: 'Demo session',
      sessionId: null,
      task: { do: 'demo', sessionId: randomUUID() },
    }),
  };
};

export const verifyLibrary: Handler<'library.verify'> = async (context) => {
  const library = context.library();
  const { findings, clips, sessions, footage } = verifyDatabase(library.reading);
  const all = [...findings, ...(await verifyFiles(library.folder, footage))];
  return { sound: all.length === 0, findings: all, clips, sessions };
};
