import { describe, expect, it } from 'vitest';
import { allCommands } from '../../../renderer/allCommands.ts';
import {
  type ChosenKeys,
  chooseKey,
  chordOfPress,
  isChord,
  type KeyPress,
  keysOf,
  keyWords,
  usualKey,
} from '../../../renderer/commands/keys.ts';
import { filterCommands } from '../../../renderer/commands/Palette.tsx';

const none = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };
const press = (key: string, code: string, held: Partial<KeyPress> = {}): KeyPress => ({ ...none, key, code, ...held });
const known = (id: string) => {
  const command = allCommands.find((one) => one.id === id);
  if (command === undefined) throw new Error(`There is no command ${id}.`);
  return command;
};
const chordsOf = (chosen: ChosenKeys, id: string) => keysOf(chosen, known(id));
const choose = (chosen: ChosenKeys, id: string, chord: string) => chooseKey(allCommands, chosen, id, chord);
const giveBack = (chosen: ChosenKeys, id: string) => usualKey(allCommands, chosen, id);

describe('a key of one’s own', () => {
  it('takes the place of the usual one, and can be given back', () => {
    const choice = choose({}, 'fine', '9');
    if (!choice.ok) throw new Error(choice.sentence);
    expect(chordsOf(choice.chosen, 'fine')).toEqual(['9']);
    expect(giveBack(choice.chosen, 'fine')).toEqual({ ok: true, chosen: {} });
  });

  it('is refused where another command has it, naming that command', () => {
    expect(choose({}, 'fine', 'K')).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('Flag as keep: praise'),
    });
  });

  it('may be one that another command has given up', () => {
    const moved = choose({}, 'keep', '9');
    if (!moved.ok) throw new Error(moved.sentence);
    expect(choose(moved.chosen, 'fine', 'K')).toMatchObject({ ok: true });
  });

  it('can’t be given back while another command holds the usual one', () => {
    const moved = choose({}, 'keep', '9');
    const taken = moved.ok ? choose(moved.chosen, 'fine', 'K') : moved;
    if (!taken.ok) throw new Error(taken.sentence);
    expect(giveBack(taken.chosen, 'keep')).toMatchObject({
      ok: false,
      sentence: expect.stringContaining('Mark the cell fine'),
    });
  });

  it('is the one that hints name', () => {
    const choice = choose({}, 'markStart', 'Alt+J');
    if (!choice.ok) throw new Error(choice.sentence);
    expect([keyWords({}, known('markStart')), keyWords(choice.chosen, known('markStart'))]).toEqual(['S', 'Alt J']);
  });

  it.each(['Escape', 'Tab', 'Mod+W'])('is refused where the window needs it: %s', (chord) => {
    expect(choose({}, 'fine', chord).ok).toBe(false);
  });
});

describe('the chord of a key press', () => {
  it.each([
    [press('z', 'KeyZ'), 'Z'],
    [press('Z', 'KeyZ', { shiftKey: true }), 'Shift+Z'],
    [press('z', 'KeyY', { ctrlKey: true }), 'Mod+Z'],
    [press('é', 'Digit2'), '2'],
    [press('?', 'Minus', { shiftKey: true }), '?'],
    [press('ф', 'KeyA'), 'A'],
    [press('ArrowLeft', 'ArrowLeft', { shiftKey: true }), 'Shift+ArrowLeft'],
  ])('is one that the press answers to, on US and other layouts', (pressed, chord) => {
    expect(chordOfPress(pressed)).toBe(chord);
    expect(isChord(pressed, chord)).toBe(true);
  });

  it.each([
    press('Shift', 'ShiftLeft', { shiftKey: true }),
    press('@', 'KeyQ', { altKey: true }),
    press('Dead', 'Quote'),
  ])('is none for a key that only goes with others', (pressed) => {
    expect(chordOfPress(pressed)).toBeNull();
  });
});

describe('finding a command by its name', () => {
  const listed = [...new Set(allCommands)].map((face) => ({ face }));
  const found = (typed: string) => filterCommands(listed, typed).map(({ face }) => face);

  it('holds every word typed, those that begin with it first', () => {
    expect(found('undo').map(({ id }) => id)).toEqual(['undo']);
    expect(
      found('repeat')
        .map(({ id }) => id)
        .slice(0, 2),
    ).toEqual(['loop', 'loopRange']);
    expect(found('picture back').every(({ group }) => group === 'picture')).toBe(true);
    expect(found('')).toHaveLength(listed.length);
    expect(found('nothing of the kind')).toEqual([]);
  });
});
