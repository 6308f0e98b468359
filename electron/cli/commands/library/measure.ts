import type { Command } from 'commander';
import { sayWarningToCoach } from '../../../../engine/wording/sayMeasuring.ts';
import type { Result } from '../../../contract/requests.ts';
import { followJobs, requireAllDone } from '../../library/followJobs.ts';
import { allSessions, type OpenLibrary, withLibrary } from '../../library/openLibrary.ts';
import { example } from '../../options/example.ts';
import { numberColumns, textColumns, textTable } from '../../print/table.ts';
import type { Host } from '../../run/host.ts';

type MeasureOptions = {
  readonly library: string;
  readonly session?: string;
  readonly joints: boolean;
  readonly again?: true;
  readonly json?: true;
};

type Line = {
  readonly sessionId: string;
  readonly clipId: string;
  readonly name: string;
  readonly reps: number;
  readonly suggestions: number;
  readonly warnings: readonly string[];
};

/** `library measure`: measures clips of a library and keeps the results there. */
export function addLibraryMeasure(library: Command, host: Host): void {
  library
    .command('measure')
    .description(
      'Measures the clips of a library or of one session; clips without reps get the reps that are measured.',
    )
    .requiredOption('--library <dir>', "the library's folder")
    .option('--session <id>', 'the session whose clips to measure (default: all; see "rackside library list")')
    .option('--no-joints', 'follow the disc alone: much faster')
    .option('--again', 'measure again what has been measured already')
    .option('--json', 'print what was measured as JSON')
    .addHelpText('after', example('rackside library measure --library ~/reviews --session SESSION --no-joints'))
    .action((options: MeasureOptions) =>
      withLibrary(host, host.resolve(options.library), async (open) => {
        const clips = await clipsOf(open, options.session);
        const clipIds = clips.map(({ clipId }) => clipId);
        const how = { joints: options.joints, again: options.again === true };
        const jobs =
          clips.length === 0 ? [] : await followJobs(host, open, () => open.ask('measures.start', { clipIds, ...how }));
        const lines: Line[] = [];
        for (const clip of clips) lines.push(lineOf(clip, await open.ask('measures.get', { clipId: clip.clipId })));
        host.print(options.json ? `${JSON.stringify(lines)}\n` : listing(lines));
        requireAllDone(jobs);
      }),
    );
}

type ClipOf = Pick<Line, 'sessionId' | 'clipId' | 'name'>;

/** Clips whose footage is in the library. */
async function clipsOf(open: OpenLibrary, asked: string | undefined): Promise<readonly ClipOf[]> {
  const sessionIds = asked === undefined ? (await allSessions(open)).map(({ id }) => id) : [asked];
  const clips: ClipOf[] = [];
  for (const sessionId of sessionIds) {
    const { review, media } = await open.ask('review.get', { sessionId });
    const there = new Set(media.filter(({ hasPoster }) => hasPoster).map(({ clipId }) => clipId));
    for (const { id, name } of review.entries.flatMap((entry) => entry.clips)) {
      if (there.has(id)) clips.push({ sessionId, clipId: id, name });
    }
  }
  return clips;
}

function lineOf(clip: ClipOf, { measurement, suggestions }: Result<'measures.get'>): Line {
  return {
    ...clip,
    reps: measurement?.reps.length ?? 0,
    suggestions: suggestions.length,
    warnings: measurement?.warnings.map((one) => sayWarningToCoach(one, 'en')) ?? [],
  };
}

function listing(lines: readonly Line[]): string {
  if (lines.length === 0) return 'No clips to measure.\n';
  return textTable(
    [...textColumns('Clip'), ...numberColumns('Reps', 'Suggestions'), ...textColumns('Warnings')],
    lines.map(({ name, reps, suggestions, warnings }) => [name, String(reps), String(suggestions), warnings.join(' ')]),
  );
}
