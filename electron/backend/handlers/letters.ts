import { randomUUID } from 'node:crypto';
import type { Edition } from '../../../engine/edition/edition.ts';
import type { EditableLine } from '../../../engine/letter/edits.ts';
import { paragraphExercises, sessionExercises } from '../../../engine/letter/paragraphExercises.ts';
import { groundsOf } from '../../../engine/letter/shape.ts';
import { speakerOf } from '../../../engine/letter/speaker.ts';
import { firstName } from '../../../engine/letter/writeLetter.ts';
import type { SentLetter } from '../../contract/letters.ts';
import { ProblemError } from '../../contract/reply.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import { editionOfSession } from '../documents/editionOfSession.ts';
import { assertNamesClear } from '../documents/nameDoubts.ts';
import { documentToHtml } from '../documents/renderReviewDocument.ts';
import { isSentAlready, keepSent, sentDocument } from '../documents/sentLetter.ts';
import { recordAct } from '../store/acts.ts';
import type { Row } from '../store/changes.ts';
import { inTransaction } from '../store/connection.ts';
import { findOwnParagraph, listLetterEdits, listSentLetters, type SentLetterRow } from '../store/letters.ts';
import { readStanding, writeSent } from '../store/night.ts';
import { findSession } from '../store/sessions.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';

const summary = (row: SentLetterRow): SentLetter => ({
  version: row.version,
  sentAt: row.sent_at,
  rubricVersion: row.rubric_version,
  mark: row.letter,
  sha256: row.sha256,
});

/** Lines with the exercises they speak of: their own, else those of the heading they stand under, else all. */
function withExercises(lines: readonly EditableLine[], edition: Edition) {
  const { style, review, plan } = edition;
  const speaker = speakerOf(style.language, review.voice, style.tone);
  const exercisesOf = paragraphExercises(plan(), speaker);
  const all = sessionExercises(plan(), speaker);
  let heading = all;
  return lines.map((line) => {
    const own = exercisesOf(line.id);
    if (line.kind === 'heading') heading = own === '' ? all : own;
    return { ...line, exercise: own === '' ? heading : own };
  });
}

export const getLetter: Handler<'letters.get'> = (context, { sessionId }) => {
  const { edition } = editionOfSession(context, sessionId, { names: 'full', to: 'writeLetter' });
  const letter = edition.letter();
  const sent = listSentLetters(context.library().reading, sessionId);
  return {
    style: edition.style,
    paragraphs: withExercises(letter.lines, edition),
    waiting: letter.waiting.map(({ paragraph, words }) => ({ id: paragraph, words })),
    leftOut: withExercises(letter.leftOut, edition),
    name: firstName(edition.plan().trainee),
    sent: sent.map(summary),
    sentAlready:
      sent.length > 0 &&
      isSentAlready(sent.at(-1), editionOfSession(context, sessionId, { names: 'asWanted', to: 'writeLetter' })),
  };
};

export const setLetterStyle: Handler<'letters.style'> = (context, { sessionId, style }) => {
  findSession(context.library().reading, sessionId);
  const columns: Row = {
    ...(style.language !== undefined && { letter_language: style.language }),
    ...(style.length !== undefined && { letter_length: style.length }),
    ...(style.tone !== undefined && { letter_tone: style.tone }),
  };
  return actOnSession(context, sessionId, (changes) => {
    changes.update('session', { id: sessionId }, columns);
    return { name: { id: 'letterStyled', values: {} }, value: {} };
  });
};

/** The edit remembers what the paragraph says by itself, so that it can tell when that has changed. */
export const editLetter: Handler<'letters.edit'> = (context, { sessionId, paragraph, words }) => {
  const { edition } = editionOfSession(context, sessionId, { names: 'full', to: 'writeLetter' });
  const lines = edition.letter().lines.filter(({ id }) => id === paragraph);
  if (words !== null && lines.some(({ kind }) => kind === 'fixed'))
    throw new ProblemError('bad-request', 'fixedParagraph');
  const own = findOwnParagraph(context.library().reading, sessionId, paragraph);
  if (own !== undefined && words !== null) {
    return actOnSession(context, sessionId, (changes) => {
      changes.update('letter_paragraph', { id: own.id }, { words, basis: groundsOf(edition.plan()) });
      return { name: { id: 'letterEdited', values: {} }, value: {} };
    });
  }
  const line = [...lines, ...edition.letter().leftOut].find(({ id, kind }) => id === paragraph && kind === 'paragraph');
  const known = listLetterEdits(context.library().reading, sessionId).find((each) => each.paragraph === paragraph);
  if (line === undefined && known === undefined) {
    throw new ProblemError('not-found', 'noParagraph');
  }
  return actOnSession(context, sessionId, (changes) => {
    if (words === null || words === line?.own) {
      if (known !== undefined) changes.remove('letter_edit', { id: known.id });
      return { name: { id: 'letterEditRemoved', values: {} }, value: {} };
    }
    const columns = { paragraph, words, basis: line?.own ?? known?.basis ?? '' };
    if (known === undefined) changes.insert('letter_edit', { id: randomUUID(), session_id: sessionId, ...columns });
    else changes.update('letter_edit', { id: known.id }, columns);
    return { name: { id: 'letterEdited', values: {} }, value: {} };
  });
};

export const sendLetter: Handler<'letters.send'> = (context, { sessionId }) => {
  const library = context.library();
  const edition = editionOfSession(context, sessionId, { names: 'asWanted', to: 'writeLetter' });
  assertNamesClear(context, sessionId, edition.edition, 'none');
  const row = inTransaction(library.writing, () => {
    const sentAt = new Date().toISOString();
    const sent = keepSent(library.writing, edition, sentAt);
    writeSent(library.writing, sessionId, sentAt, readStanding(library.writing, sessionId));
    recordAct(
      library.writing,
      { sessionId, actorName: actorName(library), kind: 'once' },
      { id: 'letterSent', values: { version: sent.version } },
    );
    return sent;
  });
  tellChanged(context, sessionId);
  return summary(row);
};

export const getSentLetter: Handler<'letters.sent'> = (context, { sessionId, version, scheme }) => ({
  html: documentToHtml(sentDocument(context, sessionId, version), { ...(scheme && { scheme }) }),
});
