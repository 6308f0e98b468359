import { describe, expect, it } from 'vitest';
import { sayDoubts, sayNotCounted } from '../../../engine/wording/sayOffered.ts';

describe('movements that were not counted', () => {
  it.each([
    [1, 'en', 'One movement was not counted'],
    [3, 'en', '3 movements were not counted'],
    [1, 'de', 'Eine Bewegung zählt nicht mit'],
    [3, 'de', '3 Bewegungen zählen nicht mit'],
  ] as const)('%i in %s', (count, language, words) => {
    expect(sayNotCounted(count, language)).toBe(words);
  });

  it('say why, in either language, and never nothing', () => {
    const doubts = ['failed', 'cutOffAtEnd'] as const;
    expect(sayDoubts({ doubts }, 'en')).toBe(
      'it went back before the way was done, like a failed rep; the clip ends in the middle of it',
    );
    expect(sayDoubts({ doubts }, 'de')).toContain('Fehlversuch');
    expect(sayDoubts({ doubts: [] }, 'en')).toBe('too little in the clip is like it');
  });
});
