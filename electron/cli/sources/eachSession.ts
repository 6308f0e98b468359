import { ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { cancelledError, oneLine, outcomeOf } from '../run/outcome.ts';

/** What came of one review file: what the work gave, or why it failed, in one sentence. */
export type SessionOutcome<T> =
  | { readonly kind: 'done'; readonly value: T }
  | { readonly kind: 'failed'; readonly file: string; readonly sentence: string };

/**
 * Does the same with several review files, one after the other; one that fails keeps none of the others back. Throws
 * `cancelled` at once.
 */
export async function eachSession<T>(
  host: Host,
  files: readonly string[],
  work: (file: string, host: Host) => Promise<T>,
): Promise<readonly SessionOutcome<T>[]> {
  const outcomes: SessionOutcome<T>[] = [];
  for (const [index, file] of files.entries()) {
    if (host.signal.aborted) throw cancelledError();
    const show: Host['progress']['show'] = (share, what) =>
      host.progress.show((index + (share ?? 0)) / files.length, `${file}: ${what}`);
    show(0, '');
    try {
      outcomes.push({ kind: 'done', value: await work(file, { ...host, progress: { ...host.progress, show } }) });
    } catch (error) {
      const { code, line } = outcomeOf(error);
      if (code === 130) throw error;
      outcomes.push({ kind: 'failed', file, sentence: oneLine(`${file}: ${line}`) });
    }
  }
  host.progress.clear();
  return outcomes;
}

/** Says each failure on standard error, then throws one sentence that names the files that failed, if there are any. */
export function requireAllSessions(host: Host, outcomes: readonly SessionOutcome<unknown>[]): void {
  const failed = outcomes.filter((outcome) => outcome.kind === 'failed');
  if (failed.length === 0) return;
  for (const { sentence } of failed) host.say(sentence);
  const names = failed.map(({ file }) => `"${oneLine(file).slice(0, 60)}"`).join(', ');
  throw ProblemError.inWords(
    'bad-review',
    `${failed.length} of ${outcomes.length} sessions failed (${names}); the others were written.`,
  );
}
