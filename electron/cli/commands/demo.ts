import { readdir, rename, rm } from 'node:fs/promises';
import path from 'node:path';
import type { Command } from 'commander';
import type { Review } from '../../../engine/review/review.ts';
import { writeReview } from '../../../engine/review/writeReview.ts';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { writeWhole } from '../../backend/files/writeWhole.ts';
import { ProblemError } from '../../contract/reply.ts';
import { followJobs, requireAllDone } from '../library/followJobs.ts';
import { type OpenLibrary, withLibrary } from '../library/openLibrary.ts';
import { example } from '../options/example.ts';
import { gradeReport } from '../print/gradeReport.ts';
import type { Host } from '../run/host.ts';
import { editionOfSession, readSession } from '../sources/reviewFile.ts';
import { withDemoFolder } from '../write/demoFolder.ts';

/** `demo --out DIR`: the whole job, from clips to handover, on the demo's footage. */
export function addDemo(program: Command, host: Host): void {
  program
    .command('demo')
    .description(
      'Creates a library with the demo session and its clips, measures and grades it, and hands it over: letter, sheet, clips.',
    )
    .requiredOption('--out <dir>', 'the folder to write to: new, empty, or an earlier demo, which is replaced')
    .option('--json', 'print the grade and the names of the files as JSON')
    .addHelpText('after', example('rackside demo --out rackside-demo'))
    .action(async (options: { out: string; json?: true }) => {
      const folder = host.resolve(options.out);
      const seed = path.join(host.appFolder, 'seeds', 'demo', 'session.json');
      const { review: planned, catalogue } = await readSession(host, seed);
      const { review, files } = await withDemoFolder(folder, (staging) =>
        writeDemo(host, staging, planned.coach ?? ''),
      );
      const edition = await editionOfSession(host, { review, catalogue }, {});
      if (options.json) {
        host.print(
          `${JSON.stringify({ folder, library: path.join(folder, 'library'), files, grade: gradeJson(edition.grade(), 'en') })}\n`,
        );
        return;
      }
      const written = ['library', ...files].map((name) => `  ${path.join(options.out, name)}\n`).join('');
      host.print(`${gradeReport(edition)}\nWritten\n${written}`);
    });
}

/** The demo's review as it was measured, and the files beside its library. */
export type Demo = { readonly review: Review; readonly files: readonly string[] };

/** Creates the demo's library in a folder, and hands its session over into the same folder. */
export async function writeDemo(host: Host, folder: string, coach: string): Promise<Demo> {
  return withLibrary(host, path.join(folder, 'library'), async (library) => {
    const jobs = await followJobs(host, library, () =>
      library.ask('library.create', { contents: 'demo', voice: 'coach', coach }),
    );
    requireAllDone(jobs);
    const { sessions } = await library.ask('desk.sessions', {});
    const sessionId = sessions[0]?.id;
    if (sessionId === undefined)
      throw ProblemError.inWords('internal', 'The demo came without a session; nothing was kept.');
    await measure(host, library, sessionId);
    const { review: stored } = await library.ask('review.get', { sessionId });
    const review = await withPaths(library, folder, stored as Review);
    const files = await handOver(host, library, { sessionId, folder });
    await writeWhole(path.join(folder, 'session.json'), new TextEncoder().encode(writeReview(review)));
    return { review, files: [...files, 'session.json'] };
  });
}

/** Follows the disc alone: the joints would take longer than all the rest. */
async function measure(host: Host, library: OpenLibrary, sessionId: string): Promise<void> {
  const { review } = await library.ask('review.get', { sessionId });
  const clipIds = review.entries.flatMap((entry) => entry.clips.map(({ id }) => id));
  requireAllDone(await followJobs(host, library, () => library.ask('measures.start', { clipIds, joints: false })));
}

/** Hands the session over, and moves the handover's files into the demo's folder; gives their names. */
async function handOver(
  host: Host,
  library: OpenLibrary,
  { sessionId, folder }: { readonly sessionId: string; readonly folder: string },
): Promise<readonly string[]> {
  const handed = path.join(folder, 'handed-over');
  requireAllDone(
    await followJobs(host, library, () => library.ask('handover.start', { sessionIds: [sessionId], folder: handed })),
  );
  const { deliveries } = await library.ask('handover.list', { sessionId });
  const delivery = deliveries.at(-1);
  const [missing] = delivery?.failed ?? [];
  if (delivery === undefined || missing !== undefined) {
    throw ProblemError.inWords('internal', missing?.sentence ?? 'The demo was not handed over; nothing was kept.');
  }
  const names = (await readdir(delivery.path)).sort();
  for (const name of names) await rename(path.join(delivery.path, name), path.join(folder, name));
  await rm(handed, { recursive: true });
  return names;
}

/** The review with the path of each clip, relative to the folder, so that another library can import it. */
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
