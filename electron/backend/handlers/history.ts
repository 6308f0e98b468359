import { tellChanged } from '../context/tellChanged.ts';
import { listHistory, redo, undo } from '../store/history.ts';
import { findSession } from '../store/sessions.ts';
import type { Handler } from './handler.ts';

export const undoAct: Handler<'history.undo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSession(reading, sessionId);
  undo(writing, sessionId);
  tellChanged(context, sessionId);
  return {};
};

export const redoAct: Handler<'history.redo'> = (context, { sessionId }) => {
  const { reading, writing } = context.library();
  findSession(reading, sessionId);
  redo(writing, sessionId);
  tellChanged(context, sessionId);
  return {};
};

export const listActs: Handler<'history.list'> = (context, { sessionId }) => {
  const { reading } = context.library();
  findSession(reading, sessionId);
  return listHistory(reading, sessionId);
};
