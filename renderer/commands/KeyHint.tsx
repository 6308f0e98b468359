import type { CommandFace } from './command.ts';
import { keyWords } from './keys.ts';
import { keysState } from './keysState.ts';

/** The key of a command, small, beside its label; the label says the rest. */
export function KeyHint({ command }: { readonly command: CommandFace }) {
  return <kbd className="key-hint">{keysState((state) => keyWords(state.chosen, command))}</kbd>;
}
