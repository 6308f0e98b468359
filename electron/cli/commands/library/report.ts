import type { Command } from 'commander';
import { withLibrary } from '../../library/openLibrary.ts';
import { example } from '../../options/example.ts';
import type { Host } from '../../run/host.ts';

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
