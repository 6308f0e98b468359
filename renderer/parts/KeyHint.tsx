import { chordWords } from '../keys/chord.ts';
import type { KeyId } from '../keys/keyTable.ts';
import { keyTable } from '../keys/keyTable.ts';
import { keysState } from '../state/keysState.ts';

/** The key of an act, small, beside its label; the label says the rest. */
export function KeyHint({ act }: { readonly act: KeyId }) {
  const chosen = keysState((state) => state.chosen[act]);
  const [chord = ''] = chosen ?? keyTable.find((entry) => entry.id === act)?.chords ?? [];
  return <kbd className="key-hint">{chordWords(chord).join(' ')}</kbd>;
}
