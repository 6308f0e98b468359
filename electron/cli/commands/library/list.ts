import type { Command } from 'commander';
import type { SessionSummary } from '../../../contract/desk.ts';
import type { Result } from '../../../contract/requests.ts';
import { allSessions, withLibrary } from '../../library/openLibrary.ts';
import { example } from '../../options/example.ts';
import { percent } from '../../print/numbers.ts';
import { numberColumns, textColumns, textTable } from '../../print/table.ts';
import type { Host } from '../../run/host.ts';

/** `library list`: the sessions of a library. */
export function addList(library: Command, host: Host): void {
  library
    .command('list')
    .description('Lists the sessions of a library with their grades.')
    .requiredOption('--library <dir>', "the library's folder")
    .option('--json', 'print sessions and trainees as JSON')
    .addHelpText('after', example('rackside library list --library ~/reviews'))
    .action(async (options: { library: string; json?: true }) => {
      const desk = await withLibrary(host, host.resolve(options.library), async (open) => ({
        sessions: await allSessions(open),
        trainees: await open.ask('desk.trainees', {}),
      }));
      host.print(options.json ? `${JSON.stringify(listJson(desk))}\n` : listing(desk.sessions));
    });
}

type Desk = { readonly sessions: readonly SessionSummary[]; readonly trainees: Result<'desk.trainees'> };

/** What `library list --json` prints. A session's mark is called its letter there. */
function listJson({ sessions, trainees }: Desk) {
  return { sessions: sessions.map(({ mark: letter, ...session }) => ({ ...session, letter })), trainees };
}

function listing(sessions: readonly SessionSummary[]): string {
  if (sessions.length === 0) return 'No sessions yet.\n';
  return textTable(
    [
      ...textColumns('Date', 'Trainee', 'Session'),
      ...numberColumns('Clips', 'Flags'),
      ...textColumns('Grade'),
      ...numberColumns('Looked at'),
      ...textColumns('Id'),
    ],
    sessions.map((session) => [
      session.date,
      session.traineeName,
      session.readOnly ? `${session.title} (from another coach’s Rackside, read-only)`.trim() : session.title,
      String(session.clips),
      String(session.flags),
      session.mark === '' ? '-' : `${session.mark}${session.provisional ? ' (provisional)' : ''}`,
      percent(session.coverage),
      session.id,
    ]),
  );
}
