import * as v from 'valibot';
import { create } from 'zustand';
import { handoverOptionsSchema } from '../../electron/contract/handover.ts';
import { keepInProfile, readProfile } from '../base/profile.ts';

const storageKey = 'rackside.handover';

/** What a coach mostly wants the same again. Paper is kept for all documents; names and the day to film are asked each time. */
const choicesSchema = v.omit(handoverOptionsSchema, ['paper', 'names', 'nextFilming']);
export type HandoverChoices = v.InferOutput<typeof choicesSchema>;

function readChoices(): HandoverChoices {
  try {
    const kept = v.safeParse(choicesSchema, JSON.parse(readProfile(storageKey) ?? '{}'));
    if (kept.success) return kept.output;
  } catch {
    // What can't be read was not written by this window: the usual choices then.
  }
  return v.parse(choicesSchema, {});
}

type ChoicesState = {
  readonly choices: HandoverChoices;
  readonly choose: (change: Partial<HandoverChoices>) => void;
};

/** How the last handover was made; kept in the window's profile. */
export const handoverChoices = create<ChoicesState>()((set, get) => ({
  choices: readChoices(),
  choose: (change) => {
    const choices = { ...get().choices, ...change };
    keepInProfile(storageKey, JSON.stringify(choices));
    set({ choices });
  },
}));
