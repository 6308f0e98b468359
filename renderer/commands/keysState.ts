import * as v from 'valibot';
import { create } from 'zustand';
import { type ChosenKeys, chooseKey, type KeyChoice, usualKey } from './keyChoice.ts';
import { type KeyId, keyTable } from './keyTable.ts';

const place = 'rackside.keys';
const stored = v.record(v.string(), v.array(v.pipe(v.string(), v.maxLength(40))));

/** What the window's profile keeps; anything that is no key choice is left out. */
function readChosen(): ChosenKeys {
  try {
    const parsed = v.safeParse(stored, JSON.parse(localStorage.getItem(place) ?? '{}'));
    const known = new Set<string>(keyTable.map(({ id }) => id));
    return parsed.success ? Object.fromEntries(Object.entries(parsed.output).filter(([id]) => known.has(id))) : {};
  } catch {
    return {};
  }
}

type KeysState = {
  readonly chosen: ChosenKeys;
  /** Gives an act a key; the sentence why not, or ''. */
  readonly give: (id: KeyId, chord: string) => string;
  /** Gives an act its usual key again; the sentence why not, or ''. */
  readonly giveBack: (id: KeyId) => string;
  readonly giveAllBack: () => void;
};

/** The keys as this person has them. */
export const keysState = create<KeysState>()((set, get) => {
  const take = (choice: KeyChoice): string => {
    if (!choice.ok) return choice.sentence;
    localStorage.setItem(place, JSON.stringify(choice.chosen));
    set({ chosen: choice.chosen });
    return '';
  };
  return {
    chosen: readChosen(),
    give: (id, chord) => take(chooseKey(get().chosen, id, chord)),
    giveBack: (id) => take(usualKey(get().chosen, id)),
    giveAllBack: () => void take({ ok: true, chosen: {} }),
  };
});
