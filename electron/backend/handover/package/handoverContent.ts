import { createHash } from 'node:crypto';
import { toMarkdown } from '../../../../engine/document/toMarkdown.ts';
import { writeReview } from '../../../../engine/review/writeReview.ts';
import type { Context } from '../../context/context.ts';
import { type LibrarySource, librarySource } from '../source/librarySource.ts';

/**
 * SHA-256 of what a session says when it leaves the desk, under the name that the trainee wants: its letter, the data of
 * its sheet, its notes and drawings, and what is covered. It rests on formats that are published, so that another way to
 * keep the same in memory is nothing new. How a handover is made (paper, clips, another name) is no part of it.
 */
export function contentHash({ edition, covered }: LibrarySource): string {
  const parts = [
    toMarkdown(edition.letter().document),
    edition.sheetJson(),
    writeReview(edition.review),
    JSON.stringify(covered),
  ];
  return createHash('sha256').update(JSON.stringify(parts)).digest('hex');
}

/** The same of a session as it is now. Throws `not-found`, and `conflict` for a second look. */
export const contentOfSession = (context: Context, sessionId: string): string =>
  contentHash(librarySource(context, sessionId, 'asWanted'));
