import { randomUUID } from 'node:crypto';
import type { Edition } from '../../../engine/edition/edition.ts';
import { groundsOf } from '../../../engine/letter/shape.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { editionOfSession } from '../documents/editionOfSession.ts';
import { type Changes, readRow } from '../store/changes.ts';
import { findOwnParagraph, listLeftOut } from '../store/letters.ts';
import { actOnSession } from './acts.ts';
import type { Handler } from './handler.ts';

const letterOf = (context: Context, sessionId: string): Edition =>
  editionOfSession(context, sessionId, { names: 'full', to: 'writeLetter' }).edition;

/** Throws `bad-request` for what is fixed, and `not-found` for what is no paragraph of the letter. */
function assertMovable(edition: Edition, paragraph: string): void {
  const { lines, leftOut } = edition.letter();
  const line = [...lines, ...leftOut].find(({ id }) => id === paragraph);
  if (line === undefined) throw new ProblemError('not-found', 'noParagraph');
  if (line.kind !== 'paragraph') throw new ProblemError('bad-request', 'fixedParagraph');
}

/** The part of the letter that a line belongs to; a notice has several lines. Throws `not-found` without one. */
function partOf(edition: Edition, id: string): string {
  const { lines, leftOut } = edition.letter();
  const line = [...lines, ...leftOut].find((each) => each.id === id || each.part === id);
  if (line === undefined) throw new ProblemError('not-found', 'noParagraph');
  return line.part;
}

function keepOrder(changes: Changes, sessionId: string, order: readonly string[]): void {
  const parts = JSON.stringify(order);
  const key = { session_id: sessionId };
  if (readRow(changes.reading, 'letter_order', key) === null) changes.insert('letter_order', { ...key, parts });
  else changes.update('letter_order', key, { parts });
}

/** An order with a part put after another; null = at the beginning. */
function putAfter(order: readonly string[], part: string, after: string | null): string[] {
  const others = order.filter((id) => id !== part);
  return others.toSpliced(after === null ? 0 : others.indexOf(after) + 1, 0, part);
}

export const addParagraph: Handler<'letters.add'> = (context, { sessionId, after }) => {
  const edition = letterOf(context, sessionId);
  const place = partOf(edition, after);
  const paragraph = `own-${randomUUID()}`;
  return actOnSession(context, sessionId, (changes) => {
    const basis = groundsOf(edition.plan());
    changes.insert('letter_paragraph', { id: paragraph, session_id: sessionId, words: '', basis });
    keepOrder(changes, sessionId, putAfter(edition.letter().order, paragraph, place));
    return { name: { id: 'letterParagraphAdded', values: {} }, value: { paragraph } };
  });
};

export const leaveParagraphOut: Handler<'letters.leaveOut'> = (context, { sessionId, paragraph }) => {
  const edition = letterOf(context, sessionId);
  assertMovable(edition, paragraph);
  const { reading } = context.library();
  const own = findOwnParagraph(reading, sessionId, paragraph);
  const isOut = listLeftOut(reading, sessionId).some((each) => each.paragraph === paragraph);
  return actOnSession(context, sessionId, (changes) => {
    const name = { id: 'letterParagraphLeftOut', values: {} } as const;
    if (own !== undefined && own.words.trim() === '') deleteOwn(changes, sessionId, paragraph);
    else if (!isOut) changes.insert('letter_left_out', { id: randomUUID(), session_id: sessionId, paragraph });
    return { name, value: {} };
  });
};

export const bringParagraphBack: Handler<'letters.bringBack'> = (context, { sessionId, paragraph }) => {
  const out = listLeftOut(context.library().reading, sessionId).find((each) => each.paragraph === paragraph);
  if (out === undefined) throw new ProblemError('not-found', 'noParagraph');
  return actOnSession(context, sessionId, (changes) => {
    changes.remove('letter_left_out', { id: out.id });
    return { name: { id: 'letterParagraphBack', values: {} }, value: {} };
  });
};

export const removeParagraph: Handler<'letters.remove'> = (context, { sessionId, paragraph }) => {
  if (findOwnParagraph(context.library().reading, sessionId, paragraph) === undefined) {
    throw new ProblemError('not-found', 'noParagraph');
  }
  return actOnSession(context, sessionId, (changes) => {
    deleteOwn(changes, sessionId, paragraph);
    return { name: { id: 'letterParagraphRemoved', values: {} }, value: {} };
  });
};

function deleteOwn(changes: Changes, sessionId: string, paragraph: string): void {
  for (const { id, paragraph: out } of listLeftOut(changes.reading, sessionId)) {
    if (out === paragraph) changes.remove('letter_left_out', { id });
  }
  changes.remove('letter_paragraph', { id: paragraph });
}

export const moveParagraph: Handler<'letters.move'> = (context, { sessionId, paragraph, after }) => {
  const edition = letterOf(context, sessionId);
  assertMovable(edition, paragraph);
  const place = after === null ? null : partOf(edition, after);
  const order = putAfter(edition.letter().order, paragraph, place === paragraph ? null : place);
  return actOnSession(context, sessionId, (changes) => {
    if (place !== paragraph) keepOrder(changes, sessionId, order);
    return { name: { id: 'letterParagraphMoved', values: {} }, value: {} };
  });
};
