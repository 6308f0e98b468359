import { describe, expect, it } from 'vitest';
import { statusState } from '../../../../renderer/bridge/statusState.ts';
import { visitCell } from '../../../../renderer/review/commands/flagging.ts';
import { depthFlag, reviewBench, squatEntry } from '../../harness/reviewBench.ts';

const withFlags = (...flags: ReturnType<typeof depthFlag>[]) => reviewBench({ entries: [squatEntry({ flags })] });

describe('the same flag on the next rep', () => {
  it('extends the selected flag and goes there', async () => {
    const bench = await withFlags(depthFlag({ reps: [1] }));
    bench.moveTo('depth', 1);
    await bench.run('copyFlag');
    expect(bench.rackside.askedFor('flags.update')).toEqual([{ flagId: 'f1', change: { reps: [1, 2] } }]);
    expect(bench.context.cursor).toMatchObject({ column: { clipId: 'c1', rep: 2 }, flagId: 'f1' });
  });

  it('is refused without a flag, on the last rep, and for a flag on the whole set', async () => {
    const bench = await withFlags(
      depthFlag({ reps: [3] }),
      depthFlag({ id: 'f2', criterion: 'spinePosition', reps: 'set' }),
    );
    bench.moveTo('depth', 1);
    expect(bench.reasonAgainst('copyFlag')).toBe('This cell has no flag.');
    bench.moveTo('depth', 3);
    expect(bench.reasonAgainst('copyFlag')).toBe('This is the last rep of the clip.');
    bench.moveTo('spinePosition', 'set');
    expect(bench.reasonAgainst('copyFlag')).toBe('This flag is on the whole set already.');
  });
});

describe('naming the fault', () => {
  it('opens the faults of the newest flag of the cell, or of the chosen one', async () => {
    const bench = await withFlags(depthFlag(), depthFlag({ id: 'f2' }));
    bench.moveTo('depth', 2);
    await bench.run('nameFault');
    expect(bench.context.cursor.namingFlagId).toBe('f2');
    bench.context.cursor.chooseFlag('f1');
    await bench.run('nameFault');
    expect(bench.context.cursor.namingFlagId).toBe('f1');
  });

  it('is refused for praise', async () => {
    const bench = await withFlags(depthFlag({ severity: 'keep' }));
    bench.moveTo('depth', 2);
    expect(bench.reasonAgainst('nameFault')).toBe('Praise has no fault to name.');
  });
});

describe('taking away', () => {
  it('takes a flag from this rep alone when it is on others too', async () => {
    const bench = await withFlags(depthFlag({ reps: [1, 2] }));
    bench.moveTo('depth', 2);
    await bench.run('remove');
    expect(bench.rackside.askedFor('flags.update')).toEqual([{ flagId: 'f1', change: { reps: [1] } }]);
  });

  it('takes the flag away where it is on no other rep', async () => {
    const bench = await withFlags(depthFlag());
    bench.moveTo('depth', 2);
    await bench.run('remove');
    expect(bench.rackside.askedFor('flags.remove')).toEqual([{ flagId: 'f1' }]);
  });

  it('takes a tick away where there is no flag', async () => {
    const bench = await reviewBench({
      entries: [squatEntry({ ticks: [{ clip: 'c1', criterion: 'depth', reps: [2] }] })],
    });
    bench.moveTo('depth', 2);
    await bench.run('remove');
    expect(bench.rackside.askedFor('ticks.set')).toMatchObject([{ criterion: 'depth', reps: [2], fine: false }]);
  });

  it('is refused in an empty cell, and says where a mark on the whole set can be taken away', async () => {
    const bench = await withFlags(depthFlag({ reps: 'set' }));
    bench.moveTo('depth', 2);
    expect(bench.reasonAgainst('remove')).toMatch(/go to the Set column \(Home\)/);
    bench.moveTo('eccentricTempo', 2);
    expect(bench.reasonAgainst('remove')).toBe('There is no flag and no tick in this cell.');
  });
});

describe('N', () => {
  it('opens a plain note for an unflagged cell at the frame on screen, and keeps what is typed for it', async () => {
    const bench = await reviewBench({ frame: 80 });
    bench.moveTo('depth', 2);
    await bench.run('note');
    expect(bench.rackside.askedFor('flags.add')).toEqual([
      { clipId: 'c1', criterion: 'depth', severity: null, reps: [2], frame: 80 },
    ]);
    expect(bench.focused).toEqual(['f9']);
    expect(statusState.getState().done).toBe('Note: Depth, rep 2, at 0:02.667 (frame 80)');
  });
});

describe('a flag that is to be elsewhere', () => {
  it('moves to the frame on screen', async () => {
    const bench = await withFlags(depthFlag());
    bench.moveTo('depth', 2);
    await bench.run('flagHere');
    expect(bench.rackside.askedFor('flags.update')).toEqual([{ flagId: 'f1', change: { frame: 70 } }]);
    expect(statusState.getState().done).toBe('Adjust: Depth, rep 2, at 0:02.333 (frame 70)');
  });
});

describe('a click on a cell', () => {
  const first = depthFlag({ id: 'first', at: { frame: 75, ticks: 75 } });
  const second = depthFlag({ id: 'second', at: { frame: 90, ticks: 90 } });
  const cell = [{ clipId: 'c1', rep: 2 }] as const;

  it('goes to its first flag, with the next click to the next, and round', async () => {
    const bench = await withFlags(second, first);
    for (let click = 0; click < 3; click += 1) visitCell(bench.context, 'depth', cell[0]);
    expect(bench.player.log).toEqual(['seek 75', 'seek 90', 'seek 75']);
    expect(bench.context.cursor.flagId).toBe('first');
  });

  it('leaves the picture where it is within the rep, and moves it from elsewhere', async () => {
    const bench = await withFlags();
    visitCell(bench.context, 'depth', cell[0]);
    visitCell(bench.context, 'eccentricTempo', cell[0]);
    expect(bench.player.log).toEqual([]);
    visitCell(bench.context, 'depth', { clipId: 'c1', rep: 3 });
    expect(bench.player.log).toEqual(['seek 130']);
  });
});

describe('the flag of a cell', () => {
  it('is shown at its frame', async () => {
    const bench = await withFlags(depthFlag());
    bench.moveTo('depth', 2);
    await bench.run('goToFlag');
    expect(bench.player.log).toEqual(['seek 80']);
  });

  it('has its note in focus to be written', async () => {
    const bench = await withFlags(depthFlag());
    bench.moveTo('depth', 2);
    await bench.run('note');
    expect(bench.focused).toEqual(['f1']);
    expect(bench.context.cursor.flagId).toBe('f1');
  });
});
