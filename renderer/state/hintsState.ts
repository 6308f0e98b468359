import { create } from 'zustand';

/** Hints in the order they are shown, one at a time. */
export const hints = [
  {
    id: 'step',
    words: 'Shift with the arrow keys steps frame by frame; Space plays, Shift with Space plays backwards.',
  },
  { id: 'mark', words: 'The arrow keys move over the card. 1 to 4 mark what is wrong, K praises, F says fine.' },
  { id: 'rest', words: 'Shift+F says that all you have not marked is fine; U goes to the next cell not looked at.' },
  { id: 'find', words: '/ finds any act by its name; ? shows all keys and lets you change them.' },
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
