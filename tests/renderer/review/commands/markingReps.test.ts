import { describe, expect, it } from 'vitest';
import { reviewBench } from '../../harness/reviewBench.ts';

describe('marking reps', () => {
  it.each([
    ['markStart', 'start'],
    ['markStretchedEnd', 'stretchedEnd'],
    ['markEnd', 'end'],
  ])('marks an edge at the frame on screen: %s', async (id, edge) => {
    const bench = await reviewBench({ frame: 200 });
    await bench.run(id);
    expect(bench.rackside.askedFor('reps.mark')).toEqual([{ clipId: 'c1', edge, frame: 200 }]);
    expect(bench.player.log).toEqual([]);
  });

  it('goes to the column of a rep that was begun, once the review has been read again', async () => {
    const bench = await reviewBench({ frame: 200 });
    bench.moveTo('depth', 3);
    const before = bench.rackside.askedFor('review.get').length;
    await bench.run('markStart');
    expect(bench.rackside.askedFor('review.get')).toHaveLength(before + 1);
    expect(bench.context.cursor.column).toEqual({ clipId: 'c1', rep: 4 });
  });

  it.each([
    ['moveStartHere', 'start'],
    ['moveStretchedEndHere', 'stretchedEnd'],
    ['moveEndHere', 'end'],
  ])('moves an edge of the rep of the cursor to the frame on screen, without dragging: %s', async (id, edge) => {
    const bench = await reviewBench({ frame: 150 });
    bench.moveTo('depth', 'set');
    expect(bench.reasonAgainst(id)).toMatch(/the whole set/);
    bench.moveTo('depth', 2);
    await bench.run(id);
    expect(bench.rackside.askedFor('reps.moveEdge')).toEqual([{ clipId: 'c1', rep: 2, edge, frame: 150 }]);
  });

  it('takes away the rep of the cursor, and is refused on the whole set', async () => {
    const bench = await reviewBench();
    bench.moveTo('depth', 'set');
    expect(bench.reasonAgainst('removeRep')).toMatch(/the whole set/);
    expect(bench.reasonAgainst('chooseRep')).toMatch(/the whole set/);
    bench.moveTo('depth', 2);
    await bench.run('removeRep');
    expect(bench.rackside.askedFor('reps.remove')).toEqual([{ clipId: 'c1', rep: 2 }]);
  });

  it('chooses a rep, and lets go of it when it is chosen again', async () => {
    const bench = await reviewBench();
    bench.moveTo('depth', 2);
    await bench.run('chooseRep');
    expect(bench.context.cursor.chosenReps).toEqual([2]);
    await bench.run('chooseRep');
    expect(bench.context.cursor.chosenReps).toEqual([]);
  });

  it('is refused while nothing can play', async () => {
    const bench = await reviewBench({ frame: null });
    expect(bench.reasonAgainst('markStart')).toMatch(/can’t play yet/);
  });
});
