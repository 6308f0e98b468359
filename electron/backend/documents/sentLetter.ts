import { createHash } from 'node:crypto';
import type { RacksideDocument } from '../../../engine/document/document.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { findSentLetter, type SentLetterRow } from '../store/sentLetters.ts';
import { parseDocument } from './parseDocument.ts';

/** What is kept of a letter that is sent, as JSON. */
export type SentTexts = Pick<SentLetterRow, 'document' | 'review' | 'grade'>;

/** SHA-256 over a sent letter's document, review and grade, in hexadecimal. */
export const sentHash = ({ document, review, grade }: SentTexts): string =>
  createHash('sha256').update(document).update(review).update(grade).digest('hex');

/**
 * The document of a letter as it was sent. Throws `not-found` without such a version, `internal` when what is kept is not
 * what was sent.
 */
export function sentDocument(context: Context, sessionId: string, version: number): RacksideDocument {
  const row = findSentLetter(context.library().reading, sessionId, version);
  if (row === undefined) {
    throw new ProblemError('not-found', `No version ${version} of this letter was sent; nothing was changed.`);
  }
  if (sentHash(row) === row.sha256) return parseDocument(row.document);
  throw new ProblemError(
    'internal',
    `Version ${version} of this letter is no longer what was sent: its file was changed from outside; restore a backup to see it.`,
  );
}
