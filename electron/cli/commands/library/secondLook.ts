import type { Command } from 'commander';
import { withLibrary } from '../../library/openLibrary.ts';
import { example } from '../../options/example.ts';
import { agreementReport } from '../../print/agreementReport.ts';
import type { Host } from '../../run/host.ts';

type SecondLookOptions = { readonly library: string; readonly compare?: true; readonly json?: true };

/** `library second-look SESSION`: starts judging a session again, blind; with `--compare`, tells how far the two agree. */
export function addSecondLook(library: Command, host: Host): void {
  library
    .command('second-look')
    .description('Starts a blind second look at a session (the same clips, nothing judged), or compares the two.')
    .argument('<session>', 'the session that was judged first (see "rackside library list")')
    .requiredOption('--library <dir>', "the library's folder")
    .option('--compare', 'show how far the first judgement and the second look agree')
    .option('--json', 'print the new session, or all figures, as JSON')
    .addHelpText(
      'after',
      example(
        'rackside library second-look SESSION --library ~/reviews',
        'rackside library second-look SESSION --library ~/reviews --compare',
      ),
    )
    .action((sessionId: string, options: SecondLookOptions) =>
      withLibrary(host, host.resolve(options.library), async ({ ask }) => {
        if (options.compare !== true) {
          const started = await ask('secondLook.start', { sessionId });
          if (options.json) host.print(`${JSON.stringify(started)}\n`);
          else host.say(`Second look started; session ${started.sessionId}. Judge it on the desk, then compare.`);
          return;
        }
        const { agreement, clips, rubricVersion } = await ask('secondLook.compare', { sessionId });
        if (options.json) {
          host.print(`${JSON.stringify(agreement)}\n`);
          return;
        }
        const catalogue = await ask('catalogue.get', { version: rubricVersion });
        const clipName = (id: string): string => clips.find((clip) => clip.id === id)?.name ?? id;
        host.print(agreementReport(agreement, catalogue, clipName));
      }),
    );
}
