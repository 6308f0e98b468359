import { useEffect } from 'react';
import { isChord } from './chord.ts';
import { entriesNow } from './keyChoice.ts';
import { keysState } from './keysState.ts';
import type { KeyId } from './keyTable.ts';
import { takesKey } from './takesKey.ts';

export type KeyActs = Partial<Readonly<Record<KeyId, (event: KeyboardEvent) => void>>>;

const neverTakes = (): boolean => false;

/**
 * Runs the acts of a screen when their keys are pressed; keys that the focused control needs itself stay with it,
 * and `takesFirst` may keep a key to itself.
 */
export function useKeys(acts: KeyActs, takesFirst: (event: KeyboardEvent) => boolean = neverTakes): void {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.isComposing || takesKey(event)) return;
      if (takesFirst(event)) {
        event.preventDefault();
        return;
      }
      const entry = entriesNow(keysState.getState().chosen).find((known) =>
        known.chords.some((chord) => isChord(event, chord)),
      );
      const run = entry === undefined ? undefined : acts[entry.id];
      if (run === undefined) return;
      event.preventDefault();
      run(event);
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [acts, takesFirst]);
}
