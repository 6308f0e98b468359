import { mutate } from '../bridge/mutate.ts';
import { letterDraftOf, saveLetterDrafts } from '../drafts/drafts.ts';
import { letterState } from '../state/letterState.ts';
import { letterDesk } from './letterDesk.ts';
import { type Line, neighbourOf, type Place } from './paragraphMoves.ts';

const linesOf = (sessionId: string): readonly Line[] => {
  const { sessionId: known, letter } = letterState.getState();
  return known === sessionId ? (letter?.paragraphs ?? []) : [];
};

/** Adds a paragraph of the coach's own below a line, and opens it to be typed. */
export async function addBelow(sessionId: string, line: string): Promise<void> {
  await saveLetterDrafts();
  const added = await mutate('letters.add', { sessionId, after: line });
  if (added === null) return;
  letterDesk.setState({ open: added.paragraph, at: added.paragraph });
  await letterState.getState().refresh(sessionId);
}

export async function leaveOut(sessionId: string, paragraph: string): Promise<void> {
  letterDesk.setState({ open: null, focus: neighbourOf(linesOf(sessionId), paragraph) });
  await saveLetterDrafts();
  await mutate('letters.leaveOut', { sessionId, paragraph });
}

export async function move(sessionId: string, paragraph: string, { after }: Place): Promise<void> {
  letterDesk.setState({ focus: paragraph });
  await saveLetterDrafts();
  await mutate('letters.move', { sessionId, paragraph, after });
}

/** Ends typing: what is typed is saved, and a paragraph without words is left out. */
export async function close(sessionId: string, { id, words }: Pick<Line, 'id' | 'words'>): Promise<void> {
  const said = letterDraftOf(sessionId, id) ?? words;
  const goesOn = said.trim() === '' ? neighbourOf(linesOf(sessionId), id) : id;
  letterDesk.setState({ open: null, focus: goesOn, at: goesOn });
  if (said.trim() === '' && words.trim() === '') await mutate('letters.leaveOut', { sessionId, paragraph: id });
  else await saveLetterDrafts();
}
