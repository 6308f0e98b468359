import { create } from 'zustand';
import { later } from '../base/later.ts';
import { mutate } from '../bridge/mutate.ts';
import { letterState } from '../state/letterState.ts';
import { createDraftKeeper } from './draftKeeper.ts';

const draftKey = (sessionId: string, paragraph: string): string => `${sessionId}/${paragraph}`;

type LetterDrafts = { readonly drafts: Readonly<Record<string, string>> };

/** Words typed into a letter and not yet in the database. */
const letterDraftsState = create<LetterDrafts>()(() => ({ drafts: {} }));

async function save(key: string, words: string): Promise<boolean> {
  if (words.trim() === '') return false;
  const [sessionId = '', paragraph = ''] = key.split('/');
  if ((await mutate('letters.edit', { sessionId, paragraph, words })) === null) return false;
  // The saved words must be on screen before the draft over them goes.
  await letterState.getState().refresh(sessionId);
  return true;
}

const keeper = createDraftKeeper({
  save,
  later,
  idleMs: 800,
  onChange: (drafts) => letterDraftsState.setState({ drafts }),
});

/** What is typed into a paragraph and not yet saved; undefined for nothing. */
export const useLetterDraft = (sessionId: string, paragraph: string): string | undefined =>
  letterDraftsState((state) => state.drafts[draftKey(sessionId, paragraph)]);

export const typeLetterDraft = (sessionId: string, paragraph: string, words: string): void =>
  keeper.type(draftKey(sessionId, paragraph), words);
/** Saves everything typed so far, now; nothing but spaces is forgotten. */
export async function saveLetterDrafts(): Promise<void> {
  for (const [key, words] of Object.entries(letterDraftsState.getState().drafts)) {
    if (words.trim() === '') keeper.forget(key);
  }
  await keeper.flush();
}
