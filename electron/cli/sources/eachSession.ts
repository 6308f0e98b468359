import { ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { cancelledError, oneLine, outcomeOf } from '../run/outcome.ts';

/**
 * Does the same with several review files, one after the other. One that fails is named on standard error and the rest is
 * done; throws one sentence at the end when any failed, `cancelled` at once.
 */
export async function eachSession<T>(
  host: Host,
  files: readonly string[],
  work: (file: string, host: Host) => Promise<T>,
): Promise<readonly T[]> {
  const done: T[] = [];
  const failed: string[] = [];
  for (const [index, file] of files.entries()) {
    if (host.signal.aborted) throw cancelledError();
    const show: Host['progress']['show'] = (share, what) =>
      host.progress.show((index + (share ?? 0)) / files.length, `${file}: ${what}`);
    show(0, '');
    try {
      done.push(await work(file, { ...host, progress: { ...host.progress, show } }));
    } catch (error) {
      const { code, line } = outcomeOf(error);
      if (code === 130) throw error;
      host.progress.clear();
      host.say(oneLine(`${file}: ${line}`));
      failed.push(file);
    }
  }
  host.progress.clear();
  if (failed.length === 0) return done;
  const names = failed.map((file) => `"${oneLine(file).slice(0, 60)}"`).join(', ');
  throw new ProblemError(
    'bad-review',
    `${failed.length} of ${files.length} sessions failed (${names}); the others were written.`,
  );
}
