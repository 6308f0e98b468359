import { basename } from 'node:path';
import { type Command, Option } from 'commander';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { sheetLengths } from '../../../engine/sheet/sheetExtras.ts';
import { type HandoverOptions, papers } from '../../contract/handover.ts';
import { ProblemError } from '../../contract/reply.ts';
import { addClipOptions, type ClipFlags, clipOptionsOf } from '../options/clipOptions.ts';
import {
  addLetterOptions,
  type LetterFlags,
  namesOption,
  type UnsureNames,
  unsureNamesOption,
} from '../options/documentOptions.ts';
import { example } from '../options/example.ts';
import { type FootageOutside, footageOutsideOption } from '../options/footageOutside.ts';
import { isoDate } from '../options/isoDate.ts';
import { count } from '../print/numbers.ts';
import { clipNames } from '../print/undelivered.ts';
import type { Host } from '../run/host.ts';
import { oneLine, UsageError } from '../run/outcome.ts';
import { type FileHandover, type HandoverLine, handOverFiles, handOverSessions } from '../write/handOver.ts';

type HandoverFlags = ClipFlags &
  LetterFlags & {
    readonly out: string;
    readonly names?: NameMode;
    readonly unsureNames?: UnsureNames;
    readonly library?: string;
    readonly session?: readonly string[];
    readonly allDue?: true;
    readonly zip?: true;
    readonly clips: boolean;
    readonly loops: boolean;
    readonly originals?: boolean;
    readonly joints?: true;
    readonly footageOutside?: FootageOutside;
    readonly sheet: HandoverOptions['sheet'];
    readonly paper: HandoverOptions['paper'];
    readonly next?: string;
    readonly json?: true;
  };

/** `handover`: letter, sheet and clips that a trainee opens anywhere, from a review file or from a library's sessions. */
export function addHandover(program: Command, host: Host): void {
  const command = program
    .command('handover')
    .description(
      'Writes everything a trainee gets into a folder or a zip: a start page, letter, sheet, clips, stills, notes.',
    )
    .argument('[sessions...]', 'review files (JSON), which say where their clips are; or give --library')
    .requiredOption('--out <dir>', 'the folder to write to; each handover gets its own name inside it')
    .option('--library <dir>', 'the folder of a library, whose sessions are handed over; each version is kept there')
    .option('--session <ids...>', 'the sessions of the library (see "rackside library list")')
    .option('--all-due', 'every graded session of the library that was never handed over or has changed since')
    .option('--zip', 'write one zip instead of a folder')
    .option('--no-clips', 'leave the clips out: documents and stills only')
    .option('--no-loops', 'leave out the short clip of each flagged rep')
    .option('--originals', 'include the original clips even with --no-clips')
    .option('--no-originals', 'leave out the original clips, and the covered copies that stand in for them')
    .option('--joints', 'measure the joints of a review file’s clips too: much slower')
    .addOption(footageOutsideOption())
    .addOption(new Option('--sheet <length>', 'how much the sheet says').choices(sheetLengths).default('full'))
    .addOption(new Option('--paper <size>', 'paper of the PDFs').choices(papers).default('a4'))
    .option('--next <date>', 'the day to film next, as 2026-10-18 (default: a week from today)', isoDate);
  addLetterOptions(
    addClipOptions(command)
      .addOption(namesOption('as the trainee wants it, else in full'))
      .addOption(unsureNamesOption()),
  )
    .option('--json', 'print where everything is, and what could not be made, as JSON')
    .addHelpText(
      'after',
      `${example(
        'rackside handover review.json --out handovers --zip',
        'rackside handover sunday/*.json --out handovers --slow 0.5',
        'rackside handover --library ~/reviews --all-due --out handovers',
        'rackside handover --library ~/reviews --session SESSION --out handovers --names first --slow 0.5',
      )}\n\nA library keeps the length, tone and language of each letter, so --length, --tone, --language, --earlier, --rubric, --joints and --footage-outside are for review files only.`,
    )
    .action(async (files: string[], flags: HandoverFlags) => {
      const options = optionsOf(flags);
      const lines =
        files.length === 0
          ? await handOverSessions(host, { ...chosenOf(flags), folder: host.resolve(flags.out), options })
          : await handOverFiles(host, files, { folder: host.resolve(flags.out), options, ...fileFlags(flags) });
      host.progress.clear();
      report(host, lines, flags);
    });
}

function optionsOf(flags: HandoverFlags): HandoverOptions {
  return {
    ...clipOptionsOf(flags),
    ...(flags.names !== undefined && { names: flags.names }),
    clips: flags.clips,
    ...(flags.originals !== undefined && { originals: flags.originals }),
    sheet: flags.sheet,
    paper: flags.paper,
    ...(flags.next !== undefined && { nextFilming: flags.next }),
    zip: flags.zip === true,
  };
}

/** How the letters of review files are written; a library keeps that of each of its letters. */
function fileFlags({
  library,
  session,
  allDue,
  ...flags
}: HandoverFlags): Pick<FileHandover, 'edition' | 'joints' | 'footageOutside'> {
  if (library !== undefined || session !== undefined || allDue !== undefined) {
    throw new UsageError('Give review files, or --library with its sessions, not both.');
  }
  const joints = flags.joints === true || (flags.cover ?? []).includes('head');
  return { edition: flags, joints, footageOutside: flags.footageOutside };
}

function chosenOf({ library, session, allDue }: HandoverFlags) {
  if (library === undefined) throw new UsageError('Name what to hand over: a review file, or --library DIR.');
  if ((session === undefined) === (allDue === undefined)) {
    throw new UsageError('Name the sessions: --session ID..., or --all-due.');
  }
  return { library, sessions: session ?? null };
}

/** Prints where everything is; throws one sentence if something is missing. */
function report(host: Host, lines: readonly HandoverLine[], { json }: HandoverFlags): void {
  const parts = lines.flatMap(({ failed, path }) =>
    failed.map((part) => ({ ...part, from: lines.length === 1 || path === null ? '' : `${basename(path)}, ` })),
  );
  const whole = lines.filter(({ problem }) => problem !== '');
  for (const { clip, sentence, from } of parts) host.say(oneLine(`${from}${clip}: ${sentence}`));
  if (json) host.print(`${JSON.stringify(lines)}\n`);
  else {
    for (const { path, version } of lines)
      if (path !== null) host.print(`${path}${version === 1 ? '' : ` (version ${version})`}\n`);
    if (lines.length === 0) host.say('No session is due.');
  }
  if (whole.length > 0) {
    const [first] = whole;
    const how =
      lines.length === 1 ? '' : `${whole.length} of ${count(lines.length, 'session')} could not be handed over: `;
    throw ProblemError.inWords('internal', `${how}${first?.problem ?? ''}`);
  }
  if (parts.length === 0) return;
  throw ProblemError.inWords(
    'bad-media',
    `Handed over, but not all of ${clipNames(parts)}; the start page says what is missing.`,
  );
}
