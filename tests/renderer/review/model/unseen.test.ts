import { describe, expect, it } from 'vitest';
import type { Entry } from '../../../../engine/review/review.ts';
import { scorecardModel } from '../../../../renderer/review/model/scorecardModel.ts';
import { columnsToSee, nextUnseen, restOfClip, unseenCells } from '../../../../renderer/review/model/unseen.ts';
import { shippedRubric } from '../../../engine/catalogue.ts';
import { catalogue } from '../../../engine/grading/arbitraries.ts';
import { gradeEntry } from '../../../engine/grading/gradeEntry.ts';
import { allSix, clip, entry, flag, reps, ticks } from '../../../engine/reviews.ts';

const card = (of: Entry) => scorecardModel(of, gradeEntry(of, catalogue), catalogue);
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
      flags: [flag({ criterion: 'depth', severity: 'correct', reps: [1] })],
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

describe('sets filmed from different sides', () => {
  // From the front this exercise shows its tempo and its pauses alone.
  const sides = entry({ clips: [clip({ reps: reps(2) }), clip({ id: 'b', reps: reps(2), view: 'front' })] });

  it('ask of each clip only what its own view can show', () => {
    expect(unseenCells(card(sides))).toHaveLength(2 * 6 + 2 * 2);
    expect(restOfClip(card(sides), 'b').map(({ criterion }) => criterion)).toEqual(['eccentricTempo', 'pauses']);
  });

  it('are looked at in full once the rest of each clip is ticked', () => {
    const cells = { ...catalogue, rubric: shippedRubric(3) };
    const model = scorecardModel(sides, gradeEntry(sides, cells), cells);
    const all = sides.clips.flatMap(({ id }) => restOfClip(model, id).map((tick) => ({ ...tick, clip: id })));
    const grade = gradeEntry({ ...sides, ticks: all }, cells);
    expect([grade.coverage, grade.state]).toEqual([1, expect.objectContaining({ kind: 'graded', score: 100 })]);
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
      flags: [flag({ criterion: 'depth', severity: 'correct', reps: [1] })],
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
