import { createHash } from 'node:crypto';
import * as v from 'valibot';
import type { RacksideDocument } from '../../../engine/document/document.ts';
import { gradeJson } from '../../../engine/sheet/gradeJson.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import type { Writing } from '../store/connection.ts';
import { findSentLetter, insertSentLetter, listSentLetters, type SentLetterRow } from '../store/letters.ts';
import type { SessionEdition } from './editionOfSession.ts';

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

/** Whether the newest letter that was sent says what the letter of an edition says. */
export const isSentAlready = (newest: SentLetterRow | undefined, now: SessionEdition): boolean =>
  newest?.sha256 === sentHash(textsToSend(now));

/** The version of the sent letter that goes with a handover: the newest one where it says the same, else a new one. */
export function sentVersionOf(writing: Writing, handed: SessionEdition, sentAt: string): number {
  const newest = listSentLetters(writing, handed.sessionId).at(-1);
  if (newest !== undefined && isSentAlready(newest, handed)) return newest.version;
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
    throw new ProblemError('not-found', 'letterNotSent', { version });
  }
  if (sentHash(row) === row.sha256) return parseDocument(row.document);
  throw new ProblemError('internal', 'letterChanged', { version });
}

const words = v.string();
const inline = v.variant('kind', [
  v.strictObject({ kind: v.picklist(['text', 'strong', 'emphasis']), text: words }),
  v.strictObject({ kind: v.literal('time'), clip: words, us: v.number(), text: words }),
]);
const line = v.array(inline);
const align = v.picklist(['start', 'end']);

const block = v.variant('kind', [
  v.strictObject({ kind: v.literal('heading'), level: v.picklist([2, 3]), id: words, text: words }),
  v.strictObject({
    kind: v.literal('paragraph'),
    id: words,
    inlines: line,
    fixed: v.exactOptional(v.literal(true)),
  }),
  v.strictObject({ kind: v.literal('list'), id: words, ordered: v.boolean(), items: v.array(line) }),
  v.strictObject({
    kind: v.literal('table'),
    id: words,
    caption: words,
    columns: v.array(v.strictObject({ label: words, align })),
    rows: v.array(v.array(line)),
    bars: v.exactOptional(v.strictObject({ column: v.number(), shares: v.array(v.nullable(v.number())) })),
  }),
  v.strictObject({
    kind: v.literal('picture'),
    id: words,
    source: words,
    size: v.exactOptional(v.strictObject({ widthPx: v.number(), heightPx: v.number() })),
    alt: words,
    caption: words,
    beside: v.exactOptional(v.array(words)),
  }),
  v.strictObject({ kind: v.literal('notice'), id: words, title: words, paragraphs: v.array(line) }),
]);

const documentSchema = v.strictObject({
  title: words,
  language: words,
  author: words,
  date: words,
  fits: v.exactOptional(v.literal('onePage')),
  blocks: v.array(block),
});

/** A document that was kept as JSON. Throws `internal` when it is not one. */
export function parseDocument(json: string): RacksideDocument {
  const parsed = v.safeParse(documentSchema, JSON.parse(json));
  if (parsed.success) return parsed.output;
  throw new ProblemError('internal', 'letterUnreadable');
}
