import { CommanderError } from 'commander';
import { ProblemError } from '../../contract/reply.ts';

/** Wrong use of a command, said in one sentence. */
export class UsageError extends Error {}

/** How a command ended: its exit code, and the one line for standard error, '' for none. */
export type Outcome = { readonly code: number; readonly line: string };

export const done: Outcome = { code: 0, line: '' };

/** Exit codes: 0 done, 1 failed, 2 wrong use, 130 cancelled. */
export function outcomeOf(error: unknown): Outcome {
  if (error instanceof UsageError) return { code: 2, line: oneLine(error.message) };
  if (error instanceof CommanderError) return outcomeOfParsing(error);
  if (error instanceof ProblemError) {
    return { code: error.problem.code === 'cancelled' ? 130 : 1, line: oneLine(error.message) };
  }
  return { code: 1, line: oneLine(sentenceOf(error)) };
}

/** What a command throws after Ctrl-C. */
export function cancelledError(): ProblemError {
  return new ProblemError('cancelled', 'cancelled');
}

function outcomeOfParsing(error: CommanderError): Outcome {
  const shownAlready = error.code.startsWith('commander.help') || error.code === 'commander.version';
  if (shownAlready) return error.exitCode === 0 ? done : { code: 2, line: '' };
  const said = oneLine(error.message.replace(/^error: /, ''));
  return { code: 2, line: `Wrong use: ${said.replace(/\.$/, '')}. See rackside --help.` };
}

function sentenceOf(error: unknown): string {
  const code = error instanceof Error && 'code' in error && typeof error.code === 'string' ? error.code : '';
  if (code === 'ENOSPC' || code === 'EDQUOT')
    return 'The disk is full, so nothing was written; free some space and try again.';
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') {
    return 'There is no permission to read or write there, so nothing was changed; check the permissions.';
  }
  if (code === 'ENOENT' || code === 'ENOTDIR') {
    return 'That folder or file is missing and can’t be created, so nothing was changed; choose another.';
  }
  const what = error instanceof Error ? error.message : String(error);
  return `Something went wrong inside Rackside and nothing was changed (${what.slice(0, 300)}).`;
}

/** Text without line breaks and control characters, so that it stays on one line in a terminal and in a log. */
export function oneLine(text: string): string {
  return text
    .replace(/\s+/gu, ' ')
    .replace(/[\p{Cc}\p{Bidi_Control}]/gu, '?')
    .trim();
}
