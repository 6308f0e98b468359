import path from 'node:path';
import type { MessageValues } from '../../../../engine/message/message.ts';
import type { ProblemId } from '../../../../engine/wording/sayProblem.ts';
import { ProblemError } from '../../../contract/reply.ts';

const longestName = 80;

/** A file's name for a sentence: on one line, without control characters, cut when very long. */
export function shownName(file: string): string {
  const plain = path.basename(file).replace(/[\p{Cc}\p{Zl}\p{Zp}\p{Bidi_Control}]/gu, '?');
  const letters = [...plain];
  return letters.length > longestName ? `${letters.slice(0, longestName).join('')}…` : plain;
}

/** The refusal of a clip; its message is given the file's name besides its values. */
export const refuseClip = (file: string, id: ProblemId, values: MessageValues = {}, cause?: unknown): ProblemError =>
  new ProblemError('bad-media', id, { file: shownName(file), ...values }, { cause });

/** The refusal of a clip that is not where it should be. */
export const missingClip = (file: string): ProblemError =>
  new ProblemError('not-found', 'noFileThere', { file: shownName(file) });

/** What an aborted job ends with. */
export const cancelledWork = (): ProblemError => new ProblemError('cancelled', 'cancelled');
