import type { Backend } from '../../contract/backend.ts';
import type { SessionSummary } from '../../contract/desk.ts';
import { ProblemError, type Reply } from '../../contract/reply.ts';
import type { Params, RequestName, Result } from '../../contract/requests.ts';
import type { Host } from '../run/host.ts';
import { cancelledError } from '../run/outcome.ts';

/** The backend as commands use it: gives results and throws problems. */
export type OpenLibrary = {
  readonly ask: <N extends RequestName>(name: N, params: Params<N>) => Promise<Result<N>>;
  readonly onEvent: Backend['onEvent'];
  /** Asks for what tidies up: also after Ctrl-C, and without throwing when there is nothing to tidy. */
  readonly tidyUp: <N extends RequestName>(name: N, params: Params<N>) => Promise<void>;
};

/** Opens a library's backend in this process, works with it, and always closes it. */
export async function withLibrary<T>(
  host: Host,
  folder: string,
  work: (library: OpenLibrary) => Promise<T>,
): Promise<T> {
  // Loaded here, so that commands that need no library start without SQLite.
  const { openBackend } = await import('../../backend/backend.ts');
  const backend = openBackend({ libraryFolder: folder, appFolder: host.appFolder });
  try {
    return await work({
      ask: async (name, params) => {
        if (host.signal.aborted) throw cancelledError();
        return unwrap(await backend.ask(name, params));
      },
      onEvent: backend.onEvent,
      tidyUp: async (name, params) => void (await backend.ask(name, params)),
    });
  } finally {
    await backend.close();
  }
}

function unwrap<T>(reply: Reply<T>): T {
  if (reply.ok) return reply.value;
  throw ProblemError.of(reply.problem);
}

type Page<T> = { readonly sessions: readonly T[]; readonly next: string | null };

/** What all pages of a list hold, one page after the other. */
export async function allPages<T>(readPage: (after: string | null) => Promise<Page<T>>): Promise<readonly T[]> {
  const found: T[] = [];
  let after: string | null = null;
  do {
    const page: Page<T> = await readPage(after);
    found.push(...page.sessions);
    after = page.next;
  } while (after !== null);
  return found;
}

/** Every session of a library, the newest day first. */
export const allSessions = (library: OpenLibrary): Promise<readonly SessionSummary[]> =>
  allPages((after) => library.ask('desk.sessions', { after, limit: 500 }));
