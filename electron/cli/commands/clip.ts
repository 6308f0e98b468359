import path from 'node:path';
import type { Command } from 'commander';
import type { Edition } from '../../../engine/edition/edition.ts';
import type { NameMode } from '../../../engine/names/shownName.ts';
import { uniqueSlugs } from '../../backend/handover/package/fileNames.ts';
import type { WantedFiles } from '../../backend/handover/package/writeClip.ts';
import { writeClips } from '../../backend/handover/package/writeClips.ts';
import { findMediaTools } from '../../backend/media/tools/mediaTools.ts';
import type { Undelivered } from '../../contract/handover.ts';
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
import { count } from '../print/numbers.ts';
import { showStep } from '../print/showStep.ts';
import { clipNames, sayUndelivered } from '../print/undelivered.ts';
import type { Host } from '../run/host.ts';
import { UsageError } from '../run/outcome.ts';
import { eachSession, requireAllSessions } from '../sources/eachSession.ts';
import { reviewClips } from '../sources/reviewClips.ts';
import { readEdition } from '../sources/reviewFile.ts';
import { withStagingFolder } from '../write/folders.ts';

type ClipCommandFlags = ClipFlags &
  LetterFlags & {
    readonly out: string;
    readonly names?: NameMode;
    readonly unsureNames?: UnsureNames;
    readonly loops?: true;
    readonly stills?: true;
    readonly joints?: true;
    readonly footageOutside?: FootageOutside;
    readonly json?: true;
  };

/** `clip SESSION.json --out DIR`: the clips of a review with everything drawn into them. */
export function addClip(program: Command, host: Host): void {
  const command = program
    .command('clip')
    .description(
      'Writes the clips of a review file as MP4s that phones play, with notes, load path and angles in the picture.',
    )
    .argument('<sessions...>', 'the review file (JSON), which says where its clips are, or several')
    .requiredOption(
      '--out <dir>',
      'the folder to write to, made if it is missing; several sessions get a folder each in it',
    )
    .option('--loops', 'also write each flagged rep as a short clip')
    .option('--stills', 'also write a picture of each note')
    .option('--joints', 'measure the joints too, for angles in the picture: much slower')
    .addOption(footageOutsideOption());
  addLetterOptions(addClipOptions(command).addOption(namesOption('in full')).addOption(unsureNamesOption()))
    .option('--json', 'print the names of the files, and what could not be made, as JSON')
    .addHelpText(
      'after',
      example(
        'rackside clip review.json --out clips --freeze 2 --loops',
        'rackside clip review.json --out clips --slow 0.5 --no-sound --cover 610,40,90,90',
      ),
    )
    .action((files: string[], flags: ClipCommandFlags) => {
      const [file, ...others] = files;
      if (file === undefined) throw new UsageError('Name a review file.');
      const wanted = { ...clipOptionsOf(flags), clips: true, originals: false };
      const asked = { flags, wanted: { ...wanted, stills: flags.stills === true } };
      return others.length === 0 ? writeOne(host, file, asked) : writeSeveral(host, files, asked);
    });
}

type Asked = { readonly flags: ClipCommandFlags; readonly wanted: WantedFiles };

type Written = {
  readonly folder: string;
  readonly files: readonly string[];
  readonly failed: readonly Undelivered[];
};

async function writeOne(host: Host, file: string, asked: Asked): Promise<void> {
  const edition = await readEdition(host, file, asked.flags);
  const written = await writeInto(host, { file, edition, folder: host.resolve(asked.flags.out) }, asked);
  if (asked.flags.json) host.print(`${JSON.stringify(written)}\n`);
  else sayWritten(host, written);
  sayUndelivered(host, written.failed);
  requireAllClips(written.failed);
}

/** The clips of each session into a folder of its own. */
async function writeSeveral(host: Host, files: readonly string[], asked: Asked): Promise<void> {
  const { out, json } = asked.flags;
  const nameOf = uniqueSlugs('session');
  const outcomes = await eachSession(host, files, async (file, each) => {
    const edition = await readEdition(each, file, asked.flags);
    const { session, trainee } = edition.review;
    const folder = host.resolve(path.join(out, nameOf(`${session.date} ${trainee.name}`)));
    const written = await writeInto(each, { file, edition, folder }, asked);
    if (json === undefined) sayWritten(host, written);
    return written;
  });
  if (json) {
    const lines = outcomes.map((outcome) =>
      outcome.kind === 'done' ? outcome.value : { folder: null, files: [], failed: [], problem: outcome.sentence },
    );
    host.print(`${JSON.stringify(lines)}\n`);
  }
  const failed = outcomes.flatMap((outcome) => (outcome.kind === 'done' ? outcome.value.failed : []));
  sayUndelivered(host, failed);
  requireAllSessions(host, outcomes);
  requireAllClips(failed);
}

function sayWritten(host: Host, { files, folder }: Written): void {
  host.say(`Wrote ${count(files.length, 'file')} into ${path.relative(host.resolve('.'), folder)}.`);
}

async function writeInto(
  host: Host,
  { file, edition, folder }: { readonly file: string; readonly edition: Edition; readonly folder: string },
  { flags, wanted }: Asked,
): Promise<Written> {
  if (edition.review.entries.every(({ clips }) => clips.length === 0)) {
    throw new UsageError('The review has no clips, so nothing was written.');
  }
  const tools = await findMediaTools();
  const joints = flags.joints === true || wanted.covering.head;
  const source = await reviewClips(host, tools, { file, edition, joints, footageOutside: flags.footageOutside });
  const work = { signal: host.signal, report: showStep(host) };
  const clips = await withStagingFolder(folder, (staging) => writeClips(tools, staging, { source, wanted }, work));
  host.progress.clear();
  const failed = clips.flatMap((clip) => clip.failed);
  const files = clips.flatMap(({ opened }) => [
    ...(opened?.written.files.map(({ name }) => name) ?? []),
    ...[...(opened?.written.stills.values() ?? [])].map(({ source: name }) => name),
  ]);
  return { folder, files, failed };
}

function requireAllClips(failed: readonly Undelivered[]): void {
  if (failed.length === 0) return;
  throw ProblemError.inWords(
    'bad-media',
    `${count(failed.length, 'part')} of the clips could not be made (${clipNames(failed)}); the others were.`,
  );
}
