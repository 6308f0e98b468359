import { chordWords } from '../keys/chord.ts';
import { chordOf, type KeyId } from '../keys/keyTable.ts';

/** The key of an act, small, beside its label; the label says the rest. */
export function KeyHint({ act }: { readonly act: KeyId }) {
  return <kbd className="key-hint">{chordWords(chordOf(act)).join(' ')}</kbd>;
}
