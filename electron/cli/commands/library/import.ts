import { statSync } from 'node:fs';
import { type Command, Option } from 'commander';
import { type View, views } from '../../../../engine/exercises/exercise.ts';
import { probeClip } from '../../../backend/media/probe/probeClip.ts';
import { findMediaTools } from '../../../backend/media/tools/mediaTools.ts';
import { localDay } from '../../../contract/localDay.ts';
import { followJobs, requireAllDone } from '../../library/followJobs.ts';
import { type OpenLibrary, withLibrary } from '../../library/openLibrary.ts';
import { example } from '../../options/example.ts';
import { type FootageOutside, footageOutsideOption } from '../../options/footageOutside.ts';
import { isoDate } from '../../options/isoDate.ts';
import { count } from '../../print/numbers.ts';
import type { Host } from '../../run/host.ts';
import { UsageError } from '../../run/outcome.ts';
import { requireExercise } from '../../sources/fromCatalogue.ts';
import { asksFirst } from '../../sources/reviewClips.ts';

type ImportOptions = {
  readonly library: string;
  readonly session?: string;
  readonly exercise?: string;
  readonly trainee?: string;
  readonly date?: string;
  readonly title?: string;
  readonly view?: View;
  readonly footageOutside?: FootageOutside;
  readonly json?: true;
};

/** `library import`: imports clips, a review file with its clips, or a handover. */
export function addImport(library: Command, host: Host): void {
  library
    .command('import')
    .description(
      'Imports clips into a session of a library; or, as a new session, a review file with its clips, or a handover, read-only.',
    )
    .argument('<files...>', 'clips of one exercise, or one review file (.json), or one handover (its folder or .zip)')
    .requiredOption('--library <dir>', "the library's folder")
    .option('--exercise <id>', 'the exercise the clips show, for example back-squat')
    .option('--session <id>', 'the session to add to (see "rackside library list")')
    .option('--trainee <name>', 'the trainee of the new session, without --session; added if new')
    .option('--date <date>', 'the day of the new session, as 2026-10-18 (default: today)', isoDate)
    .option('--title <text>', 'the title of the new session')
    .addOption(new Option('--view <view>', 'where the camera stood').choices(views))
    .addOption(footageOutsideOption())
    .option('--json', 'print what was imported as JSON')
    .addHelpText(
      'after',
      example(
        'rackside library import --library ~/reviews --trainee "Robin Thale" --exercise back-squat --view side set-1.mp4 set-2.mp4',
        'rackside library import --library ~/reviews review.json',
        'rackside library import --library ~/reviews 2026-10-18-robin-thale.zip',
      ),
    )
    .action(async (files: string[], options: ImportOptions) => {
      const isReview = (file: string) =>
        /\.(?:json|zip)$/i.test(file) ||
        statSync(host.resolve(file), { throwIfNoEntry: false })?.isDirectory() === true;
      const imported = files.some(isReview)
        ? await importReview(host, {
            library: options.library,
            file: theOnly(files),
            footageOutside: options.footageOutside,
          })
        : await importClips(host, files, clipTarget(options));
      if (options.json) host.print(`${JSON.stringify(imported)}\n`);
      else host.say(`Imported ${count(imported.clips, 'clip')}; session ${imported.sessionId}.`);
    });
}

function theOnly([first, ...others]: readonly string[]): string {
  if (first !== undefined && others.length === 0) return first;
  throw new UsageError('A review file or a handover is imported by itself: give one of them, or only clips.');
}

function clipTarget({ library, exercise, session, trainee, date, title, view }: ImportOptions) {
  if (exercise === undefined) throw new UsageError('Name the exercise that the clips show: --exercise ID.');
  if (session !== undefined) {
    if (trainee === undefined && date === undefined && title === undefined) {
      return { library, exercise, view, into: { kind: 'session', sessionId: session } } as const;
    }
    throw new UsageError('Give either --session, or --trainee, --date and --title of a new one.');
  }
  if (trainee === undefined || trainee.trim() === '') {
    throw new UsageError(
      'Say whose clips they are: --trainee NAME for a new session, or --session ID for an existing one.',
    );
  }
  const into = {
    kind: 'new',
    trainee: trainee.trim(),
    date: date ?? localDay(new Date()),
    title: title ?? '',
  } as const;
  return { library, exercise, view, into };
}

/** What came into a library. */
export type Imported = { readonly sessionId: string; readonly clips: number };

type NewSession = { readonly kind: 'new'; readonly trainee: string; readonly date: string; readonly title: string };

export type ClipTarget = {
  readonly library: string;
  readonly exercise: string;
  readonly view: View | undefined;
  readonly into: NewSession | { readonly kind: 'session'; readonly sessionId: string };
};

/**
 * Imports clips into a session, as a new entry of the exercise. All of them are read and checked first, so that one bad
 * clip leaves the library as it was; a new session that no clip came into is discarded.
 */
export async function importClips(host: Host, files: readonly string[], target: ClipTarget): Promise<Imported> {
  return withLibrary(host, host.resolve(target.library), async (library) => {
    const paths = files.map(host.resolve);
    const exercise = requireExercise(
      await library.ask('catalogue.get', {}),
      target.exercise,
      'nothing was imported',
    ).id;
    await checkClips(host, paths);
    const { sessionId, discard } = await sessionFor(library, target.into);
    try {
      const jobs = await followJobs(host, library, () =>
        library.ask('clips.import', { sessionId, exercise, view: target.view ?? null, paths }),
      );
      requireAllDone(jobs);
    } catch (error) {
      await discard();
      throw error;
    }
    return { sessionId, clips: paths.length };
  });
}

type ReviewToImport = {
  readonly library: string;
  readonly file: string;
  readonly footageOutside: FootageOutside;
};

/** Imports a review file and its clips into a library, whole or not at all. */
export async function importReview(
  host: Host,
  { library: folder, file, footageOutside: allowed }: ReviewToImport,
): Promise<Imported> {
  return withLibrary(host, host.resolve(folder), async (library) => {
    let sessionId = '';
    const jobs = await followJobs(host, library, async () => {
      const path = host.resolve(file);
      const outside = await library.ask('reviews.footageOutside', { path });
      if (outside.length > 0 && allowed !== true) throw asksFirst(file, outside, 'nothing was imported');
      ({ sessionId } = await library.ask('reviews.import', { path, footageOutside: outside }));
    });
    requireAllDone(jobs);
    const { review } = await library.ask('review.get', { sessionId });
    return { sessionId, clips: review.entries.reduce((sum, entry) => sum + entry.clips.length, 0) };
  });
}

async function checkClips(host: Host, paths: readonly string[]): Promise<void> {
  const tools = await findMediaTools();
  for (const [index, each] of paths.entries()) {
    host.progress.show(index / paths.length, 'Checking the clips');
    await probeClip(tools, each, { signal: host.signal });
  }
}

type OpenSession = { readonly sessionId: string; readonly discard: () => Promise<void> };

/** The session to import into; `discard` removes one that was added for it, as long as it holds no clip. */
async function sessionFor(library: OpenLibrary, into: ClipTarget['into']): Promise<OpenSession> {
  if (into.kind === 'session') return { sessionId: into.sessionId, discard: async () => undefined };
  const { trainee: name, title, date } = into;
  const known = (await library.ask('desk.trainees', {})).find((trainee) => trainee.name === name)?.id;
  const traineeId = known ?? (await addTrainee(library, name));
  const { sessionId } = await library.ask('sessions.add', { traineeId, title, date });
  const trainee = known === undefined ? 'discard' : 'keep';
  return { sessionId, discard: () => library.tidyUp('sessions.discard', { sessionId, trainee }) };
}

async function addTrainee(library: OpenLibrary, name: string): Promise<string> {
  const usual = { goal: 'growth', experience: 'experienced', units: 'kg', minor: false } as const;
  return (await library.ask('trainees.add', { name, ...usual })).traineeId;
}
