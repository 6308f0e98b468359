import { chordWords } from './chord.ts';
import { type KeyEntry, type KeyId, keyTable } from './keyTable.ts';

/** Chords that a person chose in place of the usual ones. */
export type ChosenKeys = Partial<Readonly<Record<KeyId, readonly string[]>>>;

export type KeyChoice =
  | { readonly ok: true; readonly chosen: ChosenKeys }
  | { readonly ok: false; readonly sentence: string };

/** Keys that every window needs for itself. */
const reserved = new Set(['Escape', 'Tab', 'Shift+Tab', 'Mod+C', 'Mod+V', 'Mod+X', 'Mod+Q', 'Mod+W', 'Mod+R']);

/** Every act with the chords it has now. */
export const entriesNow = (chosen: ChosenKeys): readonly (KeyEntry & { readonly id: KeyId })[] =>
  keyTable.map((entry) => ({ ...entry, chords: chosen[entry.id] ?? entry.chords }));

/** The first chord an act has now, as people read it: "Shift F". */
export const chordSaid = (chosen: ChosenKeys, id: KeyId): string =>
  said(entriesNow(chosen).find((entry) => entry.id === id)?.chords[0] ?? '');

const said = (chord: string): string => chordWords(chord).join(' ');

/** Gives an act a key of the person's own; refused where another act or the window has it. */
export function chooseKey(chosen: ChosenKeys, id: KeyId, chord: string): KeyChoice {
  if (reserved.has(chord)) {
    return { ok: false, sentence: `${said(chord)} belongs to the window; choose another key.` };
  }
  const holder = entriesNow(chosen).find((entry) => entry.id !== id && entry.chords.includes(chord));
  if (holder !== undefined) {
    return {
      ok: false,
      sentence: `${said(chord)} is already “${holder.label}”; change that first, or choose another key.`,
    };
  }
  return { ok: true, chosen: { ...chosen, [id]: [chord] } };
}

/** Gives an act its usual keys again; refused where another act has got one of them meanwhile. */
export function usualKey(chosen: ChosenKeys, id: KeyId): KeyChoice {
  const { [id]: _, ...rest } = chosen;
  const usual: readonly string[] = keyTable.find((entry) => entry.id === id)?.chords ?? [];
  const holder = entriesNow(rest).find((entry) => entry.id !== id && entry.chords.some((one) => usual.includes(one)));
  if (holder === undefined) return { ok: true, chosen: rest };
  return { ok: false, sentence: `Its usual key is now “${holder.label}”; change that first.` };
}
