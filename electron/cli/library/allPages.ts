import type { SessionSummary } from '../../contract/desk.ts';
import type { OpenLibrary } from './openLibrary.ts';

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
