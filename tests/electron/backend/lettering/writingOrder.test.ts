import { describe, expect, it } from 'vitest';
import { fromLeftToRight, mirrored, writingOrderOf } from '../../../../electron/backend/lettering/writingOrder.ts';

const latin = 'ABCDEFGHIJKLMNOPQRSTUVW';
const hebrew = [...'אבגדהוזחטיכלמנסעפצקרשתך'];
const hidden = /[\u200F\u2067\u2069]/;

/** Capitals stand for letters from right to left, as in the examples of the standard. */
const asWritten = (example: string): string =>
  [...example].map((letter) => hebrew[latin.indexOf(letter)] ?? letter).join('');
const asPrinted = (text: string): string => [...text].map((letter) => latin[hebrew.indexOf(letter)] ?? letter).join('');

function displayed(example: string): string {
  const memory = asWritten(example);
  const { levelAt } = writingOrderOf(memory);
  const characters = [...memory].map((character, index) => ({ character, level: levelAt(index) }));
  const seen = fromLeftToRight(characters).filter(({ character }) => !hidden.test(character));
  return asPrinted(seen.map(({ character, level }) => (level % 2 === 0 ? character : mirrored(character))).join(''));
}

describe('the order of both directions', () => {
  // Unicode Standard Annex #9, section 3.4, the examples of rule L2 (the second begins with a right-to-left mark here).
  it.each([
    ['car means CAR.', 'car means RAC.'],
    ['\u200Fcar MEANS CAR.', '.RAC SNAEM car'],
    [
      'he said “\u2067car MEANS CAR=\u2069.” “\u2067IT DOES=\u2069,” she agreed.',
      'he said “=RAC SNAEM car.” “=SEOD TI,” she agreed.',
    ],
  ])('of %j is as the standard shows it', (memory, expected) => {
    expect(displayed(memory)).toBe(expected);
  });

  it('keeps figures as they are, and has brackets open the other way (rules W2 and L4)', () => {
    expect(displayed('GO DOWN (12) TIMES')).toBe('SEMIT (12) NWOD OG');
    expect(displayed('LIFT [kg] NOW')).toBe('WON [kg] TFIL');
  });

  it('is left alone without such letters', () => {
    const { direction, levelAt } = writingOrderOf('Back squat, (3 reps) 深さ');
    expect(direction).toBe('ltr');
    expect(Array.from({ length: 20 }, (_, index) => levelAt(index)).every((level) => level === 0)).toBe(true);
  });
});
