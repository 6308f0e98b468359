import { expect, it } from 'vitest';
import { weights } from '../../../engine/rubric/rubric.ts';
import { isChord, type KeyPress } from '../../../renderer/commands/chord.ts';
import { keyGroups, keyTable } from '../../../renderer/commands/keyTable.ts';

const none = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };
const press = (key: string, code: string, held: Partial<KeyPress> = {}): KeyPress => ({ ...none, key, code, ...held });

const actsOf = (pressed: KeyPress): readonly string[] =>
  keyTable.filter((entry) => entry.chords.some((chord) => isChord(pressed, chord))).map((entry) => entry.id);

/** What a keyboard with the US layout sends for a chord. */
function pressOf(chord: string): KeyPress {
  const parts = chord === '+' ? ['+'] : chord.split('+');
  const key = parts.at(-1) ?? '';
  const held = { shiftKey: parts.includes('Shift') || key === '?' || key === '+', ctrlKey: parts.includes('Mod') };
  if (/^\d$/.test(key)) return press(key, `Digit${key}`, held);
  if (/^[A-Z]$/.test(key)) return press(held.shiftKey ? key : key.toLowerCase(), `Key${key}`, held);
  if (key === 'Space') return press(' ', 'Space', held);
  return press(key, key === '?' ? 'Slash' : key, held);
}

it('gives every key to one act only', () => {
  for (const { id, chords } of keyTable) {
    for (const chord of chords) expect(actsOf(pressOf(chord)), chord).toEqual([id]);
  }
});

it('names every act once and puts it in a group of the key sheet', () => {
  const ids = keyTable.map((entry) => entry.id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const { group, label } of keyTable) {
    expect(keyGroups).toContain(group);
    expect(label).not.toBe('');
  }
});

it('has a key for every weight of a flag', () => {
  const ids: readonly string[] = keyTable.map((entry) => entry.id);
  expect(ids).toEqual(expect.arrayContaining([...weights]));
});

it.each([
  // A French layout prints "&" on the first key of the digit row; a Russian one has no Latin letters; a German one swaps Y and Z.
  ['the digit row of a French layout', press('&', 'Digit1'), ['prefer']],
  ['the F key of a Russian layout', press('а', 'KeyF'), ['fine']],
  ['Z where a German layout prints it', press('z', 'KeyY', { ctrlKey: true }), ['undo']],
  ['Command instead of Ctrl', press('z', 'KeyZ', { metaKey: true }), ['undo']],
  ['a question mark wherever it is', press('?', 'Minus', { shiftKey: true }), ['keySheet']],
  ['a letter with Ctrl that is no act', press('f', 'KeyF', { ctrlKey: true }), []],
  ['Alt, which belongs to the window', press('f', 'KeyF', { altKey: true }), []],
  ['the number pad with its arrows on', press('ArrowLeft', 'Numpad4'), ['cellLeft']],
])('reads %s', (_what, pressed, acts) => {
  expect(actsOf(pressed)).toEqual(acts);
});
