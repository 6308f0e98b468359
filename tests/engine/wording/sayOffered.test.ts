import { describe, expect, it } from 'vitest';
import { sayDoubts, sayNotCounted } from '../../../engine/wording/sayOffered.ts';

describe('movements that were not counted', () => {
  it.each([
    [1, 'en', 'One movement was not counted as a rep'],
    [3, 'en', '3 movements were not counted as reps'],
    [1, 'de', 'Eine Bewegung wurde nicht als Wiederholung gezählt'],
    [3, 'de', '3 Bewegungen wurden nicht als Wiederholungen gezählt'],
  ] as const)('%i in %s', (count, language, words) => {
    expect(sayNotCounted(count, language)).toBe(words);
  });

  it('say why, in either language, and never nothing', () => {
    const doubts = ['failed', 'cutOffAtEnd'] as const;
    expect(sayDoubts({ doubts }, 'en')).toBe(
      'it turned back before the lift was finished, like a failed rep; the clip ends in the middle of it',
    );
    expect(sayDoubts({ doubts }, 'de')).toContain('Fehlversuch');
    expect(sayDoubts({ doubts: [] }, 'en')).toBe('the clip has too few movements like it');
  });
});
