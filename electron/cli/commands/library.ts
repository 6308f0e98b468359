import { type Command, Option } from 'commander';
import type { Voice } from '../../contract/library.ts';
import { ProblemError } from '../../contract/reply.ts';
import { withLibrary } from '../library/openLibrary.ts';
import { example } from '../options/example.ts';
import { count } from '../print/numbers.ts';
import type { Host } from '../run/host.ts';
import { addImport } from './library/import.ts';
import { addList } from './library/list.ts';
import { addLibraryMeasure } from './library/measure.ts';
import { addSecondLook } from './library/secondLook.ts';

/** `library ...`: the commands that look after a library. */
export function addLibrary(program: Command, host: Host): void {
  const library = program
    .command('library')
    .description('Manages a library: create, import, list, measure, second look, verify, report.');
  for (const add of [addInit, addImport, addList, addLibraryMeasure, addSecondLook, addVerify, addReport])
    add(library, host);
}

/** `library init`: a new, empty library. */
export function addInit(library: Command, host: Host): void {
  library
    .command('init')
    .description('Creates an empty library in a folder.')
    .requiredOption('--library <dir>', "the library's folder")
    .addOption(
      new Option('--voice <voice>', 'who speaks in its letters: a coach, or the trainee to themselves')
        .choices(['coach', 'self'])
        .default('coach'),
    )
    .option('--coach <name>', 'the name that signs the letters', '')
    .option('--json', 'print what was created as JSON')
    .addHelpText('after', example('rackside library init --library ~/reviews --voice coach --coach "Jo Harwick"'))
    .action(async (options: { library: string; voice: Voice; coach: string; json?: true }) => {
      const folder = host.resolve(options.library);
      const { voice, coach } = options;
      await withLibrary(host, folder, (open) => open.ask('library.create', { contents: 'empty', voice, coach }));
      if (options.json) host.print(`${JSON.stringify({ folder, voice, coach })}\n`);
      else host.say(`Created an empty library in ${options.library}.`);
    });
}

type ReportOptions = { readonly library: string; readonly out: string; readonly json?: true };

/** `library report`: what helps somebody else to find a fault, without names or footage. */
export function addReport(library: Command, host: Host): void {
  library
    .command('report')
    .description('Writes a problem report: versions, what "verify" finds, and the log; no names, notes or footage.')
    .requiredOption('--library <dir>', "the library's folder")
    .requiredOption('--out <file>', 'the file to write, as text')
    .option('--json', 'print where it was written as JSON')
    .addHelpText('after', example('rackside library report --library ~/reviews --out report.txt'))
    .action(async ({ library: folder, out, json }: ReportOptions) => {
      const path = host.resolve(out);
      const written = await withLibrary(host, host.resolve(folder), (open) => open.ask('report.write', { path }));
      host.print(json ? `${JSON.stringify(written)}\n` : `Written to ${written.path}.\n`);
    });
}

/** `library verify`: whether the library is sound, and every clip still what was imported. */
export function addVerify(library: Command, host: Host): void {
  library
    .command('verify')
    .description('Checks a library: the database, and every clip against what was imported. Changes nothing.')
    .requiredOption('--library <dir>', "the library's folder")
    .option('--json', 'print the findings as JSON')
    .addHelpText('after', example('rackside library verify --library ~/reviews'))
    .action(async (options: { library: string; json?: true }) => {
      const result = await withLibrary(host, host.resolve(options.library), (open) => open.ask('library.verify', {}));
      const counted = `${count(result.sessions, 'session')}, ${count(result.clips, 'clip')}`;
      if (options.json) host.print(`${JSON.stringify(result)}\n`);
      else
        host.print(result.sound ? `Sound: ${counted}.\n` : result.findings.map((finding) => `${finding}\n`).join(''));
      if (result.sound) return;
      const findings = count(result.findings.length, 'finding');
      throw ProblemError.inWords('library-damaged', `The library is not sound (${findings}); nothing was changed.`);
    });
}
