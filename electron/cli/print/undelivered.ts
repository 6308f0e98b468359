import type { Undelivered } from '../../contract/handover.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { oneLine } from '../run/outcome.ts';

/** The names of the clips that something is missing of, each once, in quotation marks. */
export function clipNames(failed: readonly Undelivered[]): string {
  return [...new Set(failed.map(({ clip }) => `"${oneLine(clip).slice(0, 60)}"`))].join(', ');
}

/** Says on standard error what is missing of each clip, and why. */
export function sayUndelivered(host: Host, failed: readonly Undelivered[]): void {
  for (const { clip, sentence } of failed) host.say(oneLine(`${clip}: ${sentence}`));
}

/** Says what a written document lacks of each clip, then throws one sentence; does nothing if it lacks nothing. */
export function requireAllShown(host: Host, failed: readonly Undelivered[]): void {
  if (failed.length === 0) return;
  sayUndelivered(host, failed);
  throw ProblemError.inWords('bad-media', `Written, but without the pictures or measures of ${clipNames(failed)}.`);
}
