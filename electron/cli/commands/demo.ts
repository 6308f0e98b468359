import path from 'node:path';
import type { Command } from 'commander';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { example } from '../options/example.ts';
import { gradeReport } from '../print/gradeReport.ts';
import type { Host } from '../run/host.ts';
import { editionOfSession, readSession } from '../sources/reviewFile.ts';
import { withDemoFolder } from '../write/demoFolder.ts';
import { writeDemo } from '../write/writeDemo.ts';

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
