import { type Command, Option } from 'commander';
import type { Voice } from '../../../contract/library.ts';
import { withLibrary } from '../../library/openLibrary.ts';
import { example } from '../../options/example.ts';
import type { Host } from '../../run/host.ts';

/** `library init`: a new, empty library. */
export function addInit(library: Command, host: Host): void {
  library
    .command('init')
    .description('Creates an empty library in a folder.')
    .requiredOption('--library <dir>', "the library's folder")
    .addOption(
      new Option('--voice <voice>', 'who speaks in its letters: a coach, or the athlete to themselves')
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
