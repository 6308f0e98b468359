import { chordWords } from './chord.ts';
import type { CommandFace } from './command.ts';

/** The chords that a person chose in place of the usual ones, by command id. */
export type ChosenKeys = Readonly<Record<string, readonly string[]>>;

export type KeyChoice =
  | { readonly ok: true; readonly chosen: ChosenKeys }
  | { readonly ok: false; readonly sentence: string };

type Keyed = Pick<CommandFace, 'id' | 'keys'>;
type Named = Pick<CommandFace, 'id' | 'keys' | 'label'>;

/** Keys that every window needs for itself. */
const reserved = new Set(['Escape', 'Tab', 'Shift+Tab', 'Mod+C', 'Mod+V', 'Mod+X', 'Mod+Q', 'Mod+W', 'Mod+R']);

const read = (chord: string): string => chordWords(chord).join(' ');

/** The chords of a command now: the person's own, else the usual ones. */
export const keysOf = (chosen: ChosenKeys, { id, keys }: Keyed): readonly string[] => chosen[id] ?? keys;

/** The first chord of a command now, as people read it: "Shift F". */
export const keyWords = (chosen: ChosenKeys, command: Keyed): string => read(keysOf(chosen, command)[0] ?? '');

/** Gives a command a key of the person's own; refused where another command or the window has it. */
export function chooseKey(commands: readonly Named[], chosen: ChosenKeys, id: string, chord: string): KeyChoice {
  if (reserved.has(chord)) {
    return { ok: false, sentence: `${read(chord)} belongs to the window; choose another key.` };
  }
  const holder = commands.find((one) => one.id !== id && keysOf(chosen, one).includes(chord));
  if (holder !== undefined) {
    return {
      ok: false,
      sentence: `${read(chord)} is already “${holder.label}”; change that first, or choose another key.`,
    };
  }
  return { ok: true, chosen: { ...chosen, [id]: [chord] } };
}

/** Gives a command its usual keys again; refused where another command has one of them meanwhile. */
export function usualKey(commands: readonly Named[], chosen: ChosenKeys, id: string): KeyChoice {
  const { [id]: _, ...rest } = chosen;
  const usual = commands.find((one) => one.id === id)?.keys ?? [];
  const holder = commands.find((one) => one.id !== id && keysOf(rest, one).some((chord) => usual.includes(chord)));
  if (holder === undefined) return { ok: true, chosen: rest };
  return { ok: false, sentence: `Its usual key is now “${holder.label}”; change that first.` };
}
