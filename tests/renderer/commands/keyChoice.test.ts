import { describe, expect, it } from 'vitest';
import { filterActs } from '../../../renderer/commands/actFilter.ts';
import { chordOfPress, isChord, type KeyPress } from '../../../renderer/commands/chord.ts';
import { chooseKey, chordSaid, entriesNow, usualKey } from '../../../renderer/commands/keyChoice.ts';
import { keyTable } from '../../../renderer/commands/keyTable.ts';

const none = { shiftKey: false, ctrlKey: false, metaKey: false, altKey: false };
const press = (key: string, code: string, held: Partial<KeyPress> = {}): KeyPress => ({ ...none, key, code, ...held });
const chordsOf = (chosen: Parameters<typeof entriesNow>[0], id: string) =>
  entriesNow(chosen).find((entry) => entry.id === id)?.chords;

describe('a key of one’s own', () => {
  it('takes the place of the usual one, and can be given back', () => {
    const choice = chooseKey({}, 'fine', 'Z');
    if (!choice.ok) throw new Error(choice.sentence);
    expect(chordsOf(choice.chosen, 'fine')).toEqual(['Z']);
    expect(usualKey(choice.chosen, 'fine')).toEqual({ ok: true, chosen: {} });
  });

  it('is refused where another act has it, naming that act', () => {
    expect(chooseKey({}, 'fine', 'K')).toMatchObject({ ok: false, sentence: expect.stringContaining('Keep: praise') });
  });

  it('may be one that another act has given up', () => {
    const moved = chooseKey({}, 'keep', 'Z');
    if (!moved.ok) throw new Error(moved.sentence);
    expect(chooseKey(moved.chosen, 'fine', 'K')).toMatchObject({ ok: true });
  });

  it('can’t be given back while another act holds the usual one', () => {
    const moved = chooseKey({}, 'keep', 'Z');
    const taken = moved.ok ? chooseKey(moved.chosen, 'fine', 'K') : moved;
    if (!taken.ok) throw new Error(taken.sentence);
    expect(usualKey(taken.chosen, 'keep')).toMatchObject({ ok: false, sentence: expect.stringContaining('Fine') });
  });

  it('is the one that hints name', () => {
    const choice = chooseKey({}, 'markStart', 'Shift+Z');
    if (!choice.ok) throw new Error(choice.sentence);
    expect([chordSaid({}, 'markStart'), chordSaid(choice.chosen, 'markStart')]).toEqual(['S', 'Shift Z']);
  });

  it.each(['Escape', 'Tab', 'Mod+W'])('is refused where the window needs it: %s', (chord) => {
    expect(chooseKey({}, 'fine', chord).ok).toBe(false);
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

describe('finding an act by its name', () => {
  it('holds every word typed, those that begin with it first', () => {
    expect(filterActs(keyTable, 'undo').map(({ id }) => id)).toEqual(['undo']);
    expect(
      filterActs(keyTable, 'repeat')
        .map(({ id }) => id)
        .slice(0, 2),
    ).toEqual(['loop', 'loopRange']);
    expect(filterActs(keyTable, 'picture back').every(({ group }) => group === 'Picture')).toBe(true);
    expect(filterActs(keyTable, '')).toHaveLength(keyTable.length);
    expect(filterActs(keyTable, 'nothing of the kind')).toEqual([]);
  });
});
