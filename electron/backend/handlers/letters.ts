import { randomUUID } from 'node:crypto';
import type { SentLetter } from '../../contract/letters.ts';
import { ProblemError } from '../../contract/reply.ts';
import { actorName, tellChanged } from '../context/acting.ts';
import { editionOfSession } from '../documents/editionOfSession.ts';
import { documentToHtml } from '../documents/renderReviewDocument.ts';
import { keepSent, sentDocument } from '../documents/sentLetter.ts';
import { recordAct } from '../store/acts.ts';
import type { Row } from '../store/changes.ts';
import { inTransaction } from '../store/connection.ts';
import { listLetterEdits, listSentLetters, type SentLetterRow } from '../store/letters.ts';
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

export const getLetter: Handler<'letters.get'> = (context, { sessionId }) => {
  const { edition } = editionOfSession(context, sessionId, { names: 'full', to: 'writeLetter' });
  const letter = edition.letter();
  return {
    style: edition.style,
    paragraphs: [...letter.lines],
    waiting: letter.waiting.map(({ paragraph, words }) => ({ id: paragraph, words })),
    sent: listSentLetters(context.library().reading, sessionId).map(summary),
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
  const line = lines.find(({ kind }) => kind === 'paragraph');
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
