import { type KeyNameId, keyNames } from '../../engine/wording/english/desk/keyNames.ts';
import { sayCommandPanels } from '../words/sayCommandPanels.ts';
import { sayKeyNames } from '../words/sayKeyNames.ts';
import type { CommandFace } from './command.ts';

/** What of a keyboard event decides which chord it is. */
export type KeyPress = {
  readonly key: string;
  readonly code: string;
  readonly shiftKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
};

type Chord = { readonly mod: boolean; readonly shift: boolean; readonly key: string };

/** The parts of a chord; the plus sign itself is a key too. */
const partsOf = (chord: string): readonly string[] => (chord === '+' ? ['+'] : chord.split('+'));

const parse = (chord: string): Chord => {
  const parts = partsOf(chord);
  return { mod: parts.includes('Mod'), shift: parts.includes('Shift'), key: parts.at(-1) ?? '' };
};

/**
 * The name of the key in chords. A letter is what the layout prints on the key, or the key's place where the layout has
 * no Latin letters; a digit is the digit row's key on every layout; space is "Space".
 */
function keyName({ key, code }: KeyPress): string {
  if (/^Digit\d$/.test(code)) return code.slice(-1);
  if (/^[a-z]$/i.test(key)) return key.toUpperCase();
  if (key === ' ') return 'Space';
  const latin = key.length === 1 && key.charCodeAt(0) < 128;
  if (/^Key[A-Z]$/.test(code) && !latin) return code.slice(-1);
  return key;
}

/** Whether a key press is a chord such as "Shift+ArrowLeft", "Mod+Z" (Ctrl or Command), "F", "3" or "?". */
export function isChord(press: KeyPress, chord: string): boolean {
  const wanted = parse(chord);
  if (press.altKey || wanted.mod !== (press.ctrlKey || press.metaKey)) return false;
  // A sign such as "?" needs Shift on some layouts and not on others.
  const sign = /^[^A-Z0-9a-z]$/.test(wanted.key);
  if (sign) return press.key === wanted.key;
  return wanted.shift === press.shiftKey && keyName(press) === wanted.key;
}

/** The chord of a key press, written as in a command's keys; null for a press that can't be a chord. */
export function chordOfPress(press: KeyPress): string | null {
  const name = keyName(press);
  const alone = ['Shift', 'Control', 'Meta', 'Alt', 'AltGraph', 'Dead', 'Unidentified', 'Process'];
  if (press.altKey || name === '' || alone.includes(press.key)) return null;
  const sign = /^[^A-Z0-9a-z]$/.test(name);
  const held = [...(press.ctrlKey || press.metaKey ? ['Mod'] : []), ...(press.shiftKey && !sign ? ['Shift'] : [])];
  return [...held, name].join('+');
}

const hasName = (key: string): key is KeyNameId => Object.hasOwn(keyNames, key);

/** The chord's keys as they are printed on keyboards of the desk's language. */
export const chordWords = (chord: string): readonly string[] =>
  partsOf(chord).map((part) => (hasName(part) ? sayKeyNames(part) : part));

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

/** The first chord of a command now, as people read it: "Shift F", "Umschalt F". */
export const keyWords = (chosen: ChosenKeys, command: Keyed): string => read(keysOf(chosen, command)[0] ?? '');

/** The chords of a command now, as `aria-keyshortcuts` takes them; undefined without any. */
export function spokenKeys(chosen: ChosenKeys, command: Keyed): string | undefined {
  const chords = keysOf(chosen, command).map((chord) =>
    partsOf(chord)
      .map((part) => spokenNames[part] ?? part)
      .join('+'),
  );
  return chords.length === 0 ? undefined : chords.join(' ');
}

const spokenNames: Readonly<Record<string, string>> = { Mod: 'Control', '+': 'Plus' };

/** Gives a command a key of the person's own; refused where another command or the window has it. */
export function chooseKey(commands: readonly Named[], chosen: ChosenKeys, id: string, chord: string): KeyChoice {
  if (reserved.has(chord)) {
    return { ok: false, sentence: sayCommandPanels('windowKey', { keys: read(chord) }) };
  }
  const holder = commands.find((one) => one.id !== id && keysOf(chosen, one).includes(chord));
  if (holder !== undefined) {
    return { ok: false, sentence: sayCommandPanels('takenKey', { keys: read(chord), action: holder.label() }) };
  }
  return { ok: true, chosen: { ...chosen, [id]: [chord] } };
}

/** Gives a command its usual keys again; refused where another command has one of them meanwhile. */
export function usualKey(commands: readonly Named[], chosen: ChosenKeys, id: string): KeyChoice {
  const { [id]: _, ...rest } = chosen;
  const usual = commands.find((one) => one.id === id)?.keys ?? [];
  const holder = commands.find((one) => one.id !== id && keysOf(rest, one).some((chord) => usual.includes(chord)));
  if (holder === undefined) return { ok: true, chosen: rest };
  return { ok: false, sentence: sayCommandPanels('usualTaken', { action: holder.label() }) };
}
