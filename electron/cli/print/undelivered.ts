import type { Undelivered } from '../../contract/handover.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Host } from '../run/host.ts';
import { oneLine } from '../run/outcome.ts';

/** The names of clips of which something could not be made, each once, in quotation marks. */
export function clipNames(failed: readonly Undelivered[]): string {
  return [...new Set(failed.map(({ clip }) => `"${oneLine(clip).slice(0, 60)}"`))].join(', ');
}

/** Says on standard error what could not be made of each clip, and why. */
export function sayUndelivered(host: Host, failed: readonly Undelivered[]): void {
  for (const { clip, sentence } of failed) host.say(oneLine(`${clip}: ${sentence}`));
}

/** For a document that was written: says what it lacks of each clip, then throws one sentence if it lacks anything. */
export function requireAllShown(host: Host, failed: readonly Undelivered[]): void {
  if (failed.length === 0) return;
  sayUndelivered(host, failed);
  throw new ProblemError('bad-media', `Written, but without what the clips show of ${clipNames(failed)}.`);
}
