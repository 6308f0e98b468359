import * as v from 'valibot';
import { create } from 'zustand';
import { keepInProfile, readProfile } from '../base/profile.ts';
import { registeredCommands } from './command.ts';
import { type ChosenKeys, chooseKey, type KeyChoice, usualKey } from './keys.ts';

const storageKey = 'rackside.keys';
const stored = v.record(v.string(), v.array(v.pipe(v.string(), v.maxLength(40))));

/** Commands that had another id when keys were chosen for them. */
const renamed: Readonly<Record<string, string>> = { markLongEnd: 'markStretchedEnd' };

/** What the window's profile keeps; anything that is no key choice is left out. */
function readChosen(): ChosenKeys {
  try {
    const parsed = v.safeParse(stored, JSON.parse(readProfile(storageKey) ?? '{}'));
    return parsed.success
      ? Object.fromEntries(Object.entries(parsed.output).map(([id, keys]) => [renamed[id] ?? id, keys]))
      : {};
  } catch {
    return {};
  }
}

type KeysState = {
  readonly chosen: ChosenKeys;
  /** Gives a command a key; the sentence why not, or ''. */
  readonly choose: (id: string, chord: string) => string;
  /** Gives a command its usual key again; the sentence why not, or ''. */
  readonly reset: (id: string) => string;
  readonly resetAll: () => void;
};

/** The keys as this person has them. */
export const keysState = create<KeysState>()((set, get) => {
  const keep = (choice: KeyChoice): string => {
    if (!choice.ok) return choice.sentence;
    keepInProfile(storageKey, JSON.stringify(choice.chosen));
    set({ chosen: choice.chosen });
    return '';
  };
  return {
    chosen: readChosen(),
    choose: (id, chord) => keep(chooseKey(registeredCommands(), get().chosen, id, chord)),
    reset: (id) => keep(usualKey(registeredCommands(), get().chosen, id)),
    resetAll: () => void keep({ ok: true, chosen: {} }),
  };
});
