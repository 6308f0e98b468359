import { create } from 'zustand';
import { later } from '../base/later.ts';
import { mutate } from '../bridge/mutate.ts';
import { reviewState } from '../state/reviewState.ts';
import { createDraftKeeper } from './draftKeeper.ts';

export type DraftField = 'note' | 'cue';

export const draftKey = (flagId: string, field: DraftField): string => `${flagId}/${field}`;

/** Texts typed and not yet in the database, by `draftKey`. */
export const draftsState = create<{ readonly drafts: Readonly<Record<string, string>> }>()(() => ({ drafts: {} }));

async function save(key: string, text: string): Promise<boolean> {
  const [flagId = '', field] = key.split('/');
  const change = field === 'cue' ? { cue: text } : { note: text };
  if ((await mutate('flags.update', { flagId, change })) === null) return false;
  // The saved text must be on screen before the draft over it goes.
  await reviewState.getState().refresh();
  return true;
}

const keeper = createDraftKeeper({ save, later, idleMs: 500, onChange: (drafts) => draftsState.setState({ drafts }) });

export const typeDraft = (flagId: string, field: DraftField, text: string): void =>
  keeper.type(draftKey(flagId, field), text);
/** Saves everything typed so far, now. */
export const saveDrafts = (): Promise<void> => keeper.flush();
export const forgetDrafts = (flagId: string): void => keeper.forget(`${flagId}/`);
