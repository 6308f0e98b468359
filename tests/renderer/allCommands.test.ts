import { expect, it } from 'vitest';
import { severities } from '../../engine/rubric/rubric.ts';
import { allCommands } from '../../renderer/allCommands.ts';
import { commandGroups, registerCommands } from '../../renderer/commands/command.ts';
import { isChord, type KeyPress } from '../../renderer/commands/keys.ts';

const commands = [...new Set(allCommands)];

const none = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };
const press = (key: string, code: string, held: Partial<KeyPress> = {}): KeyPress => ({ ...none, key, code, ...held });

const idsOf = (pressed: KeyPress): readonly string[] =>
  commands.filter((entry) => entry.keys.some((chord) => isChord(pressed, chord))).map((entry) => entry.id);

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

it('gives every key to one command only', () => {
  for (const { id, keys } of commands) {
    for (const chord of keys) expect(idsOf(pressOf(chord)), chord).toEqual([id]);
  }
});

it('names every command once and puts it in a group of the key sheet', () => {
  const ids = commands.map((entry) => entry.id);
  expect(new Set(ids).size).toBe(ids.length);
  for (const { group, label } of commands) {
    expect(commandGroups).toContain(group);
    expect(label()).not.toBe('');
  }
});

it('has a key for every severity of a flag', () => {
  const ids: readonly string[] = commands.map((entry) => entry.id);
  expect(ids).toEqual(expect.arrayContaining([...severities]));
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
  expect(idsOf(pressed)).toEqual(acts);
});

it('keeps the ids under which people have keys of their own in the window’s profile', () => {
  const stored = [
    'cellLeft cellRight cellUp cellDown cellFirst cellLast fine keep prefer adjust correct stop fineRest nextUnseen',
    'chooseRep copyFlag nameFault note goToFlag remove markStart markStretchedEnd markEnd removeRep measure measureAll panel',
    'takeReps setUp nextSuggestion previousSuggestion acceptSuggestion dismissSuggestion layerPath layerDisc layerJoints',
    'layerCurves play frameBack frameOn framesBack framesOn slower faster playBackwards loop rangeFirst rangeLast',
    'loopRange ghost draw cover closer further wholePicture stripCloser stripFurther panLeft panRight panUp panDown',
    'compare previousClip nextClip nextSession theme undo redo history letter handOver palette keySheet',
  ].flatMap((line) => line.split(' '));
  expect(commands.map(({ id }) => id)).toEqual(expect.arrayContaining(stored));
});

it('refuses two commands with one id or one key', () => {
  registerCommands(allCommands);
  const [known] = allCommands;
  if (known === undefined) throw new Error('There are no commands.');
  expect(() => registerCommands([{ ...known }])).toThrow(known.id);
  expect(() => registerCommands([{ ...known, id: 'another' }])).toThrow(known.id);
  expect(() => registerCommands([known])).not.toThrow();
});
