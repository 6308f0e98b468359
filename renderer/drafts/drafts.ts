import { create } from 'zustand';
import { type Later, later } from '../base/later.ts';
import { mutate } from '../bridge/mutate.ts';
import { letterState } from '../state/letterState.ts';
import { reviewState } from '../state/reviewState.ts';

type DraftKeeperOptions = {
  /** Saves one text; false when it could not be saved, and is to be kept. */
  readonly save: (key: string, text: string) => Promise<boolean>;
  readonly later: Later;
  readonly idleMs: number;
  readonly onChange: (drafts: Readonly<Record<string, string>>) => void;
};

type DraftKeeper = {
  /** Takes what was typed; saved after a short rest. */
  readonly type: (key: string, text: string) => void;
  /** Saves now what is not saved yet; requests leave before this returns. */
  readonly flush: () => Promise<void>;
  /** Drops drafts whose keys start so, unsaved. */
  readonly forget: (keyPrefix: string) => void;
};

/** Holds typed text until the backend has it, so that no rest, blur or closing window loses a letter. */
export function createDraftKeeper({ save, later, idleMs, onChange }: DraftKeeperOptions): DraftKeeper {
  let drafts: Readonly<Record<string, string>> = {};
  const sent = new Map<string, string>();
  let callOff = (): void => {};

  const change = (next: Readonly<Record<string, string>>): void => {
    drafts = next;
    onChange(drafts);
  };
  const drop = (isDropped: (key: string) => boolean): void =>
    change(Object.fromEntries(Object.entries(drafts).filter(([key]) => !isDropped(key))));

  async function saveOne(key: string, text: string): Promise<void> {
    sent.set(key, text);
    const saved = await save(key, text);
    if (sent.get(key) === text) sent.delete(key);
    if (saved && drafts[key] === text) drop((known) => known === key);
  }

  async function flush(): Promise<void> {
    callOff();
    const unsent = Object.entries(drafts).filter(([key, text]) => sent.get(key) !== text);
    await Promise.all(unsent.map(([key, text]) => saveOne(key, text)));
  }

  return {
    type: (key, text) => {
      change({ ...drafts, [key]: text });
      callOff();
      callOff = later(idleMs, () => void flush());
    },
    flush,
    forget: (keyPrefix) => drop((key) => key.startsWith(keyPrefix)),
  };
}

export type DraftField = 'note' | 'cue';

export const draftKey = (flagId: string, field: DraftField): string => `${flagId}/${field}`;

/** Texts typed and not yet in the database, by `draftKey`. */
export const draftsState = create<{ readonly drafts: Readonly<Record<string, string>> }>()(() => ({ drafts: {} }));

async function saveFlagText(key: string, text: string): Promise<boolean> {
  const [flagId = '', field] = key.split('/');
  const change = field === 'cue' ? { cue: text } : { note: text };
  if ((await mutate('flags.update', { flagId, change })) === null) return false;
  // The saved text must be on screen before the draft over it goes.
  await reviewState.getState().refresh();
  return true;
}

const flagKeeper = createDraftKeeper({
  save: saveFlagText,
  later,
  idleMs: 500,
  onChange: (drafts) => draftsState.setState({ drafts }),
});

export const typeDraft = (flagId: string, field: DraftField, text: string): void =>
  flagKeeper.type(draftKey(flagId, field), text);
/** Saves everything typed so far, now. */
export const saveDrafts = (): Promise<void> => flagKeeper.flush();
export const forgetDrafts = (flagId: string): void => flagKeeper.forget(`${flagId}/`);

const paragraphKey = (sessionId: string, paragraph: string): string => `${sessionId}/${paragraph}`;

type LetterDrafts = { readonly drafts: Readonly<Record<string, string>> };

/** Words typed into a letter and not yet in the database. */
const letterDraftsState = create<LetterDrafts>()(() => ({ drafts: {} }));

async function saveParagraph(key: string, words: string): Promise<boolean> {
  if (words.trim() === '') return false;
  const [sessionId = '', paragraph = ''] = key.split('/');
  if ((await mutate('letters.edit', { sessionId, paragraph, words })) === null) return false;
  // The saved words must be on screen before the draft over them goes.
  await letterState.getState().refresh(sessionId);
  return true;
}

const letterKeeper = createDraftKeeper({
  save: saveParagraph,
  later,
  idleMs: 800,
  onChange: (drafts) => letterDraftsState.setState({ drafts }),
});

/** What is typed into a paragraph and not yet saved; undefined for nothing. */
export const useLetterDraft = (sessionId: string, paragraph: string): string | undefined =>
  letterDraftsState((state) => state.drafts[paragraphKey(sessionId, paragraph)]);

export const typeLetterDraft = (sessionId: string, paragraph: string, words: string): void =>
  letterKeeper.type(paragraphKey(sessionId, paragraph), words);
export const letterDraftOf = (sessionId: string, paragraph: string): string | undefined =>
  letterDraftsState.getState().drafts[paragraphKey(sessionId, paragraph)];
/** Saves the words typed so far, now; a paragraph that has none waits. */
export const saveLetterWords = (): Promise<void> => letterKeeper.flush();

/** Saves everything typed so far, now; a paragraph that was emptied is left out of its letter. */
export async function saveLetterDrafts(): Promise<void> {
  const emptied = Object.entries(letterDraftsState.getState().drafts).filter(([, words]) => words.trim() === '');
  for (const [key] of emptied) letterKeeper.forget(key);
  const leftOut = emptied.map(([key]) => {
    const [sessionId = '', paragraph = ''] = key.split('/');
    return mutate('letters.leaveOut', { sessionId, paragraph });
  });
  await Promise.all([...leftOut, letterKeeper.flush()]);
}
