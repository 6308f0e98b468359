import path from 'node:path';
import { type Review, writeReview } from '../../engine/review/index.ts';
import { writeWhole } from '../backend/files/writeWhole.ts';
import { ProblemError } from '../contract/reply.ts';
import type { Params } from '../contract/requests.ts';
import { followJobs } from './followJobs.ts';
import type { Host } from './host.ts';
import { type OpenLibrary, withLibrary } from './openLibrary.ts';
import { requireAllDone } from './requireAllDone.ts';

type Document = Omit<Params<'documents.write'>, 'sessionId' | 'path'> & { readonly name: string };

/** What a demo came to. */
export type Demo = { readonly review: Review; readonly files: readonly string[] };

const documents: readonly Document[] = [
  { name: 'letter.html', document: 'letter', format: 'html' },
  { name: 'letter.pdf', document: 'letter', format: 'pdf' },
  { name: 'letter.md', document: 'letter', format: 'md' },
  { name: 'sheet.html', document: 'sheet', format: 'html' },
  { name: 'sheet.pdf', document: 'sheet', format: 'pdf' },
  { name: 'sheet.csv', document: 'sheet', format: 'csv' },
];

/** Makes the demo's library in a folder and writes every document of its session beside it. */
export async function writeDemo(host: Host, folder: string, coach: string): Promise<Demo> {
  return withLibrary(host, path.join(folder, 'library'), async (library) => {
    const jobs = await followJobs(host, library, () =>
      library.ask('library.create', { contents: 'demo', voice: 'coach', coach }),
    );
    requireAllDone(jobs);
    const { sessions } = await library.ask('desk.get', {});
    const sessionId = sessions[0]?.id;
    if (sessionId === undefined)
      throw new ProblemError('internal', 'The demo came without a session; nothing was kept.');
    await measure(host, library, sessionId);
    const { review: stored } = await library.ask('review.get', { sessionId });
    const review = await withPaths(library, folder, stored as Review);
    const all = [...documents, ...notesOf(review)];
    for (const [index, { name, ...document }] of all.entries()) {
      host.progress.show(index / all.length, `Writing ${name}`);
      await library.ask('documents.write', { sessionId, ...document, path: path.join(folder, name) });
    }
    await writeWhole(path.join(folder, 'session.json'), new TextEncoder().encode(writeReview(review)));
    return { review, files: [...all.map(({ name }) => name), 'session.json'] };
  });
}

/** The disc alone: joints would take longer than all the rest. */
async function measure(host: Host, library: OpenLibrary, sessionId: string): Promise<void> {
  const { review } = await library.ask('review.get', { sessionId });
  const clipIds = review.entries.flatMap((entry) => entry.clips.map(({ id }) => id));
  requireAllDone(await followJobs(host, library, () => library.ask('measures.start', { clipIds, joints: false })));
}

/** Timed notes, one file a clip, named after it. */
function notesOf(review: Review): Document[] {
  const taken = new Set<string>();
  return review.entries
    .flatMap((entry) => entry.clips)
    .map((clip) => {
      const plain =
        clip.name
          .toLowerCase()
          .replace(/[^a-z0-9]+/g, '-')
          .replace(/^-|-$/g, '') || 'clip';
      let name = `notes-${plain}.vtt`;
      for (let count = 2; taken.has(name); count += 1) name = `notes-${plain}-${count}.vtt`;
      taken.add(name);
      return { name, document: 'sheet', format: 'vtt', clipId: clip.id };
    });
}

/** The review with where its footage lies, relative to the folder: so the file can be taken into another library. */
async function withPaths(library: OpenLibrary, folder: string, review: Review): Promise<Review> {
  const paths = new Map<string, string>();
  for (const clip of review.entries.flatMap((entry) => entry.clips)) {
    const { path: file } = await library.ask('media.resolve', { clipId: clip.id, what: 'clip' });
    paths.set(clip.id, path.relative(folder, file).split(path.sep).join('/'));
  }
  return {
    ...review,
    entries: review.entries.map((entry) => ({
      ...entry,
      clips: entry.clips.map((clip) => ({ ...clip, path: paths.get(clip.id) })),
    })),
  };
}
