import { describe, expect, it } from 'vitest';
import { pictureNote } from '../../../../../../electron/backend/handover/render/pictures/stills.ts';
import type { FlagRow } from '../../../../../../engine/sheet/flagRows.ts';
import type { FrameTable } from '../../../../../../engine/time/frameTable.ts';

const table: FrameTable = { timeBase: { numerator: 1, denominator: 30 }, ticks: [0, 1, 2, 3], endTicks: 4 };
const row: FlagRow = {
  ...{ flagId: 'f', entryId: 'e', exercise: 'Back squat', clip: 'c', clipName: 'Set 1', faultId: null, fault: null },
  ...{ criterion: 'depth', criterionName: 'Depth', severity: 'correct', reps: [2, 4], us: 70_000, frame: null },
  ...{ seen: 'The hips stay high.', note: '', cue: 'Sit lower.' },
};

describe('a remark on a picture', () => {
  it('is at its own frame, else at the one on screen at its time', () => {
    expect(pictureNote({ ...row, frame: 3 }, table, 'en')?.frame).toBe(3);
    expect(pictureNote(row, table, 'en')?.frame).toBe(2);
    expect(pictureNote({ ...row, us: null }, table, 'en')).toBeNull();
    expect(pictureNote({ ...row, frame: 4 }, table, 'en')).toBeNull();
  });

  it('says severity, criterion and reps in the language of the letter', () => {
    expect(pictureNote(row, table, 'en')).toMatchObject({
      heading: 'correct · Depth · Reps 2 and 4',
      words: 'The hips stay high. Sit lower.',
    });
    expect(pictureNote({ ...row, reps: null }, table, 'de')?.heading).toBe('korrigieren · Depth · Ganzer Satz');
  });

  it('begins words that are read from right to left on a line of their own', () => {
    expect(pictureNote({ ...row, note: 'انزل ببطء', cue: 'اصعد بسرعة' }, table, 'en')?.words).toBe(
      'The hips stay high.\nانزل ببطء. اصعد بسرعة.',
    );
  });
});
