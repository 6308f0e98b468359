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

const words: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  PageUp: 'Page up',
  PageDown: 'Page down',
  Mod: 'Ctrl',
};

/** The chord's keys as people read them on a key sheet. */
export const chordWords = (chord: string): readonly string[] => partsOf(chord).map((part) => words[part] ?? part);
