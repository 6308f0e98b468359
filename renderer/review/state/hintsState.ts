import { create } from 'zustand';
import type { KeyId } from '../../commands/keyTable.ts';

type KeyOf = (act: KeyId) => string;

/** Hints in the order they are shown, one at a time; they name the keys as this person has them. */
export const hints = [
  {
    id: 'step',
    words: (key: KeyOf) =>
      `${key('frameBack')} and ${key('frameOn')} step frame by frame; ${key('play')} plays, ${key('playBackwards')} plays backwards.`,
  },
  {
    id: 'mark',
    words: (key: KeyOf) =>
      `${key('cellLeft')} ${key('cellUp')} ${key('cellDown')} ${key('cellRight')} move over the card. ${key('prefer')}, ${key('adjust')}, ${key('correct')} and ${key('stop')} mark what is wrong, ${key('keep')} praises, ${key('fine')} says fine.`,
  },
  {
    id: 'rest',
    words: (key: KeyOf) =>
      `${key('fineRest')} says that all you have not marked is fine; ${key('nextUnseen')} goes to the next cell not looked at.`,
  },
  {
    id: 'measure',
    words: (key: KeyOf) =>
      `${key('measure')} measures this clip, ${key('measureAll')} all of the session; ${key('panel')} shows what was measured and what it proposes.`,
  },
  {
    id: 'find',
    words: (key: KeyOf) =>
      `${key('palette')} finds any act by its name; ${key('keySheet')} shows all keys and lets you change them.`,
  },
] as const;
export type HintId = (typeof hints)[number]['id'];

const place = 'rackside.hints';

const readDone = (): readonly string[] => (localStorage.getItem(place) ?? '').split(',').filter((id) => id !== '');

type HintsState = {
  readonly done: readonly string[];
  readonly dismiss: (id: HintId) => void;
  readonly dismissAll: () => void;
};

/** The hints that a person has put away; kept in the window's profile. */
export const hintsState = create<HintsState>()((set, get) => {
  const keep = (done: readonly string[]): void => {
    localStorage.setItem(place, done.join(','));
    set({ done });
  };
  return {
    done: readDone(),
    dismiss: (id) => keep([...get().done, id]),
    dismissAll: () => keep(hints.map(({ id }) => id)),
  };
});
