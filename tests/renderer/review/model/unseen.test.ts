import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../../engine/review/review.ts';
import { scorecardModel } from '../../../../renderer/review/model/scorecardModel.ts';
import { columnsToSee, nextUnseen, restOfClip, unseenCells } from '../../../../renderer/review/model/unseen.ts';
import { catalogue } from '../../../engine/grading/arbitraries.ts';
import { gradeEntry } from '../../../engine/grading/gradeEntry.ts';
import { allSix, clip, entry, flag, reps, ticks } from '../../../engine/reviews.ts';

const card = (of: Entry) => scorecardModel(of, gradeEntry(of, catalogue), catalogue.rubric.criteria);
const twoReps = (change: Partial<Entry> = {}) => entry({ clips: [clip({ reps: reps(2) })], ...change });
const spot = (cell: ReturnType<typeof nextUnseen>) => cell && `${cell.criterion} ${cell.column.rep}`;

describe('what is left to look at', () => {
  it('is each criterion on each rep; a set without reps is looked at as one', () => {
    expect(unseenCells(card(twoReps()))).toHaveLength(2 * 6);
    expect(unseenCells(card(entry({ clips: [clip({ reps: [] })] })))).toHaveLength(6);
    expect(columnsToSee(card(twoReps())).map(({ rep }) => rep)).toEqual([1, 2]);
  });

  it('is less by what a flag or a tick speaks of, on the rep or on the whole set', () => {
    const judged = twoReps({
      flags: [flag({ criterion: 'depth', weight: 'correct', reps: [1] })],
      ticks: ticks('pauses', 'barPath'),
    });
    expect(unseenCells(card(judged))).toHaveLength(12 - 1 - 4);
  });

  it('leaves out what no clip can show', () => {
    // From the front this exercise shows its tempo and its pauses alone.
    const front = twoReps({ clips: [clip({ reps: reps(2), view: 'front' })] });
    expect(new Set(unseenCells(card(front)).map(({ criterion }) => criterion))).toEqual(
      new Set(['eccentricTempo', 'pauses']),
    );
  });
});

describe('the way through it', () => {
  it('goes down the criteria of a rep, then to the next rep, then round', () => {
    const model = card(twoReps({ ticks: ticks('eccentricTempo', 'pauses', 'barPath', 'headPosition') }));
    const at = (criterion: string, rep: number) => ({ criterion, column: { clipId: 'a', rep } });
    expect(spot(nextUnseen(model, at('depth', 1)))).toBe('spinePosition 1');
    expect(spot(nextUnseen(model, at('spinePosition', 1)))).toBe('depth 2');
    expect(spot(nextUnseen(model, at('spinePosition', 2)))).toBe('depth 1');
    expect(nextUnseen(card(twoReps({ ticks: ticks(...allSix) })), at('depth', 1))).toBeNull();
  });
});

describe('the rest of a clip', () => {
  it('is ticked for the whole set where nothing of a criterion is marked, else for the reps that are left', () => {
    const judged = twoReps({
      flags: [flag({ criterion: 'depth', weight: 'correct', reps: [1] })],
      ticks: ticks('pauses'),
    });
    expect(restOfClip(card(judged), 'a')).toEqual([
      { criterion: 'eccentricTempo', reps: 'set' },
      { criterion: 'barPath', reps: 'set' },
      { criterion: 'headPosition', reps: 'set' },
      { criterion: 'spinePosition', reps: 'set' },
      { criterion: 'depth', reps: [2] },
    ]);
  });
});
