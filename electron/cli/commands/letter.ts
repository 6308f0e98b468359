import { type Command, Option } from 'commander';
import { example } from '../example.ts';
import { chooseFormat, handOut } from '../handOut.ts';
import type { Host } from '../host.ts';

const formats = ['md', 'html', 'pdf', 'txt'] as const;
type Format = (typeof formats)[number];

/** `letter SESSION.json`: the letter to the trainee. */
export function addLetter(program: Command, host: Host): void {
  program
    .command('letter')
    .description('Writes the letter to the trainee from a review file.')
    .argument('<session>', 'the review file (JSON)')
    .addOption(
      new Option('--format <format>', 'what to write (default: by the ending of FILE, else md)').choices(formats),
    )
    .option('--out <file>', 'where to write it (default: standard output)')
    .option('--json', 'print what was written as JSON; the letter itself within it where there is no --out')
    .addHelpText('after', example('rackside letter review.json --format pdf --out letter.pdf'))
    .action(async (file: string, options: { format?: Format; out?: string; json?: true }) => {
      const format = chooseFormat<Format>(formats, options.format, options.out, 'md');
      await handOut(host, file, { document: 'letter', format, out: options.out, json: options.json });
    });
}
