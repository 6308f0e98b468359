import { createHash } from 'node:crypto';
import type { RacksideDocument } from '../../../engine/document/document.ts';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import type { Writing } from '../store/connection.ts';
import { findSentLetter, insertSentLetter, listSentLetters, type SentLetterRow } from '../store/letters.ts';
import type { SessionEdition } from './editionOfSession.ts';
import { parseDocument } from './parseDocument.ts';

/** What is kept of a letter that is sent, as JSON. */
export type SentTexts = Pick<SentLetterRow, 'document' | 'review' | 'grade'>;

/** What is kept when a session's letter is sent now. */
function textsToSend({ edition }: SessionEdition): SentTexts {
  return {
    document: JSON.stringify(edition.letter().document),
    review: JSON.stringify(edition.review),
    grade: JSON.stringify(gradeJson(edition.grade(), edition.style.language)),
  };
}

/** Keeps the letter of an edition as its session's next version. Called within a transaction. */
export function keepSent(writing: Writing, sent: SessionEdition, sentAt: string): SentLetterRow {
  const texts = textsToSend(sent);
  const { rubric, state } = sent.edition.grade();
  return insertSentLetter(writing, {
    session_id: sent.sessionId,
    sent_at: sentAt,
    rubric_version: rubric.version,
    letter: state.kind === 'none' ? '' : state.mark,
    ...texts,
    sha256: sentHash(texts),
  });
}

/** The version of the sent letter that goes with a handover: the newest one where it says the same, else a new one. */
export function sentVersionOf(writing: Writing, handed: SessionEdition, sentAt: string): number {
  const newest = listSentLetters(writing, handed.sessionId).at(-1);
  if (newest?.sha256 === sentHash(textsToSend(handed))) return newest.version;
  return keepSent(writing, handed, sentAt).version;
}

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
