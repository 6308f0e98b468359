import { chordSaid } from './keyChoice.ts';
import { keysState } from './keysState.ts';
import type { KeyId } from './keyTable.ts';

/** The key of an act, small, beside its label; the label says the rest. */
export function KeyHint({ act }: { readonly act: KeyId }) {
  return <kbd className="key-hint">{keysState((state) => chordSaid(state.chosen, act))}</kbd>;
}
