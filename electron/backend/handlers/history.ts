import { tellChanged } from '../context.ts';
import { listHistory, readHistoryState, redo, undo } from '../store/history.ts';
import { findSession } from '../store/sessions.ts';
import type { Handler } from './handler.ts';

export const undoAct: Handler<'history.undo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSession(reading, sessionId);
  undo(writing, sessionId);
  tellChanged(context, sessionId);
  return { history: readHistoryState(reading, sessionId) };
};

export const redoAct: Handler<'history.redo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSession(reading, sessionId);
  redo(writing, sessionId);
  tellChanged(context, sessionId);
  return { history: readHistoryState(reading, sessionId) };
};

export const listActs: Handler<'history.list'> = (context, { sessionId }) => {
  const { reading } = context.library();
  findSession(reading, sessionId);
  return listHistory(reading, sessionId);
};
