import { statusState } from '../../bridge/statusState.ts';
import { sayFlags } from '../../words/sayFlags.ts';

/**
 * What a fast coach types between a key that asks for words (a severity, a note) and the field for them: kept for that field,
 * so that no letter of it runs as a key of its own. Escape ends it.
 */
export type TypeAhead = {
  /** From now on, typing is kept for the field that is about to be there. */
  readonly hold: () => void;
  /** The field can't be had: what is typed goes on being kept, and the status line says so, until Escape. */
  readonly stick: () => void;
  /** Keeps a key while typing is held; whether it did. */
  readonly keep: (event: Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'altKey'>) => boolean;
  /** Ends that; gives what was typed. */
  readonly release: () => string;
  /** Ends that too, where nobody wants the words any more; they are told. */
  readonly drop: () => void;
  /** Lets go of typing that waits for no field, as whoever turns to the mouse has stopped typing. */
  readonly letGo: () => void;
};

/** `soon`: a field is about to take it; `stuck`: none is. */
type Held = { readonly typed: string; readonly until: 'soon' | 'stuck' };

/** Whether a key writes or deletes: what nobody presses on the way to another cell. */
const writes = (key: string): boolean => key.length === 1 || ['Backspace', 'Delete', 'Enter'].includes(key);

function sayHeld(held: Held | null): string {
  if (held === null || (held.until === 'soon' && held.typed === '')) return '';
  if (held.typed === '') return sayFlags('held');
  return sayFlags(held.until === 'soon' ? 'heldSoon' : 'heldWords', { typed: held.typed });
}

export function createTypeAhead(): TypeAhead {
  let held: Held | null = null;
  const become = (next: Held | null): void => {
    held = next;
    statusState.getState().hold(sayHeld(next));
  };
  const drop = (): void => {
    const typed = held?.typed ?? '';
    become(null);
    // Words that found no field can still be read, and written down.
    if (typed !== '') statusState.getState().tell(sayFlags('notPutIn', { typed }));
  };
  return {
    hold: () => become({ typed: held?.typed ?? '', until: 'soon' }),
    stick: () => become({ typed: held?.typed ?? '', until: 'stuck' }),
    keep: ({ key, ctrlKey, metaKey, altKey }) => {
      if (held === null || ctrlKey || metaKey || altKey) return false;
      if (key === 'Escape') {
        drop();
        return true;
      }
      if (held.until === 'stuck' && !writes(key)) return false;
      if (key === 'Backspace') become({ ...held, typed: held.typed.slice(0, -1) });
      else if (key.length === 1) become({ ...held, typed: held.typed + key });
      return true;
    },
    release: () => {
      const typed = held?.typed ?? '';
      become(null);
      return typed;
    },
    drop,
    letGo: () => {
      if (held?.until === 'stuck') drop();
    },
  };
}
