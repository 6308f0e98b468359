import type { Command } from 'commander';
import { ProblemError } from '../../../contract/reply.ts';
import { withLibrary } from '../../library/openLibrary.ts';
import { example } from '../../options/example.ts';
import { count } from '../../print/numbers.ts';
import type { Host } from '../../run/host.ts';

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
      throw new ProblemError('library-damaged', `The library is not sound (${findings}); nothing was changed.`);
    });
}
