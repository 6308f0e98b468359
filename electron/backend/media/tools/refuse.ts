import path from 'node:path';
import { ProblemError } from '../../../contract/reply.ts';

const longestName = 80;

/** A file's name for a sentence: in quotes, on one line, without control characters, cut when very long. */
export function quoteName(file: string): string {
  const plain = path.basename(file).replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu, '?');
  const letters = [...plain];
  return `"${letters.length > longestName ? `${letters.slice(0, longestName).join('')}…` : plain}"`;
}

/** The refusal of a clip: `what` follows the file's name, `advice` says what to do; both without a full stop. */
export function refuseClip(file: string, what: string, advice: string, cause?: unknown): ProblemError {
  return new ProblemError(
    'bad-media',
    `${quoteName(file)} ${what}; the file and the library are as they were: ${advice}.`,
    { cause },
  );
}

/** The sentence for a clip that is not where it should be. */
export function missingClip(file: string): ProblemError {
  return new ProblemError(
    'not-found',
    `There is no file ${quoteName(file)} at that place; the library is as it was: check the name and the folder.`,
  );
}

/** What an aborted job ends with. */
export function cancelledWork(): ProblemError {
  return new ProblemError('cancelled', 'Cancelled; nothing half made was left behind.');
}
