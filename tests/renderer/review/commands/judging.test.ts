import { describe, expect, it } from 'vitest';
import { statusState } from '../../../../renderer/bridge/statusState.ts';
import { settleNaming } from '../../../../renderer/review/commands/flagging.ts';
import { playerState, playhead } from '../../../../renderer/review/state/playerState.ts';
import { reviewState } from '../../../../renderer/state/reviewState.ts';
import { changed } from '../../harness/fakeRackside.ts';
import { depthFlag, reviewBench, squatClip, squatEntry } from '../../harness/reviewBench.ts';

const twoSets = () => [squatEntry({ clips: [squatClip(), squatClip({ id: 'c2', name: 'Squat, second set' })] })];

describe('a severity key', () => {
  it('flags the cell at the frame on screen, and asks for the fault', async () => {
    const bench = await reviewBench({ frame: 80 });
    bench.moveTo('depth', 2);
    await bench.run('adjust');
    expect(bench.player.log).toEqual(['pause']);
    expect(bench.rackside.askedFor('flags.add')).toEqual([
      { clipId: 'c1', criterion: 'depth', severity: 'adjust', reps: [2], frame: 80 },
    ]);
    expect(bench.context.cursor).toMatchObject({ flagId: 'f9', namingFlagId: 'f9' });
  });

  it('asks for no fault after praise', async () => {
    const bench = await reviewBench();
    bench.moveTo('depth', 2);
    await bench.run('keep');
    expect(bench.context.cursor).toMatchObject({ flagId: 'f9', namingFlagId: null });
  });

  it('flags all chosen reps at once, and lets go of them', async () => {
    const bench = await reviewBench();
    bench.moveTo('depth', 3);
    await bench.run('chooseRep');
    bench.moveTo('depth', 1);
    await bench.run('stop');
    expect(bench.rackside.askedFor('flags.add')).toMatchObject([{ severity: 'stop', reps: [1, 3] }]);
    expect(bench.context.cursor.chosenReps).toEqual([]);
  });

  it('flags the whole set in its column', async () => {
    const bench = await reviewBench();
    bench.moveTo('spinePosition', 'set');
    await bench.run('correct');
    expect(bench.rackside.askedFor('flags.add')).toMatchObject([{ criterion: 'spinePosition', reps: 'set' }]);
  });

  it('keeps what is typed until the fault list takes it, and where nothing was saved until Escape', async () => {
    const bench = await reviewBench();
    bench.moveTo('depth', 2);
    await bench.run('prefer');
    expect(bench.context.typing.keep(new KeyPress('s'))).toBe(true);
    expect(bench.context.typing.release()).toBe('s');

    const failing = await reviewBench({ answers: { 'flags.add': undefined } });
    failing.moveTo('depth', 2);
    await failing.run('prefer');
    expect(failing.context.typing.keep(new KeyPress('s'))).toBe(true);
    expect(statusState.getState().held).toMatch(/Not entered: “s”/);
    expect(failing.context.typing.keep(new KeyPress('Escape'))).toBe(true);
    expect(failing.context.typing.keep(new KeyPress('s'))).toBe(false);
    expect(statusState.getState()).toMatchObject({ held: '', notice: 'Not entered: “s”' });
  });

  it('is refused while the clip can’t play, and while the cell is of another clip', async () => {
    const still = await reviewBench({ frame: null });
    still.moveTo('depth', 2);
    expect(still.reasonAgainst('adjust')).toMatch(/isn’t on screen yet, so nothing was flagged/);
    await still.run('adjust');
    expect(still.rackside.askedFor('flags.add')).toEqual([]);

    const bench = await reviewBench({ entries: twoSets() });
    bench.context.cursor.moveTo('depth', { clipId: 'c2', rep: 1 });
    expect(bench.reasonAgainst('adjust')).toMatch(/isn’t on screen yet/);
  });

  it('is refused before the cursor is in a cell, and without a clip', async () => {
    const bench = await reviewBench();
    expect(bench.reasonAgainst('adjust')).toBe('Choose a cell of the scorecard first.');
    const empty = await reviewBench({ entries: [squatEntry({ clips: [] })] });
    expect(empty.reasonAgainst('adjust')).toMatch(/No clip is open/);
  });
});

describe('where a flag lands', () => {
  it('waits for the picture that a seek is heading for, and says what landed where', async () => {
    const bench = await reviewBench({ frame: 61 });
    bench.moveTo('depth', 2);
    playhead.setState({ settled: false });
    bench.player.seekTo(75);
    await bench.run('adjust');
    expect(bench.rackside.askedFor('flags.add')).toEqual([]);
    expect(bench.context.typing.keep(new KeyPress('s'))).toBe(true);
    playhead.setState({ frame: 75, settled: true });
    await bench.run('wholePicture');
    expect(bench.rackside.askedFor('flags.add')).toMatchObject([{ frame: 75, reps: [2] }]);
    await bench.run('keep');
    expect(statusState.getState().done).toBe('Keep: Depth, rep 2, at 0:02.500 (frame 75)');
  });

  it('is waited for by an undo, which means it and not the act before', async () => {
    const bench = await reviewBench({ frame: 61 });
    bench.moveTo('depth', 2);
    playhead.setState({ settled: false });
    bench.player.seekTo(75);
    await bench.run('adjust');
    await bench.run('undo');
    expect(bench.rackside.askedFor('history.undo')).toEqual([]);
    playhead.setState({ frame: 75, settled: true });
    await bench.run('wholePicture');
    const acts = bench.rackside.asked.map(({ name }) => name).filter((name) => /^(flags|history)\./.test(name));
    expect(acts).toEqual(['flags.add', 'history.undo']);
  });

  it('flags nothing where no picture comes, and says so', async () => {
    const bench = await reviewBench({ frame: 61 });
    bench.moveTo('depth', 2);
    playhead.setState({ settled: false });
    await bench.run('adjust');
    playerState.setState({ trouble: 'The frame can’t be shown.' });
    await bench.run('wholePicture');
    expect(bench.rackside.askedFor('flags.add')).toEqual([]);
  });

  it('takes the frame on screen while the clip runs on, not the one that comes next', async () => {
    const bench = await reviewBench({ frame: 66 });
    bench.moveTo('depth', 2);
    playhead.setState({ settled: false });
    playerState.setState({ playing: 'forwards' });
    await bench.run('stop');
    playhead.setState({ frame: 66, settled: true });
    await bench.run('wholePicture');
    expect(bench.rackside.askedFor('flags.add')).toMatchObject([{ frame: 66 }]);
  });
});

describe('a severity on a plain note', () => {
  it('makes a flag of it where it is, and asks for the fault', async () => {
    const note = depthFlag({ severity: null, at: { frame: 75, ticks: 75 }, note: 'knees' });
    const bench = await reviewBench({ entries: [squatEntry({ flags: [note] })], frame: 90 });
    bench.moveTo('depth', 2);
    await bench.run('correct');
    expect(bench.rackside.askedFor('flags.add')).toEqual([]);
    expect(bench.rackside.askedFor('flags.update')).toEqual([{ flagId: 'f1', change: { severity: 'correct' } }]);
    expect(bench.context.cursor.namingFlagId).toBe('f1');
  });
});

describe('an undo that is quicker than the fault list', () => {
  it('gives the keys back to the scorecard', async () => {
    const bench = await reviewBench({ answers: { 'flags.add': () => ({ flagId: 'f9' }) } });
    bench.moveTo('depth', 2);
    await bench.run('adjust');
    expect(bench.context.cursor.namingFlagId).toBeNull();
    expect(bench.context.typing.keep(new KeyPress('s'))).toBe(false);
  });

  it('does so too once the list was asked for', async () => {
    const bench = await reviewBench({ entries: [squatEntry({ flags: [depthFlag()] })] });
    bench.moveTo('depth', 2);
    await bench.run('nameFault');
    bench.context.typing.hold();
    reviewState.setState(({ data }) => ({
      data: data && { ...data, review: { ...data.review, entries: [squatEntry()] } },
    }));
    settleNaming(bench.context);
    expect(bench.context.cursor.namingFlagId).toBeNull();
    expect(bench.context.typing.keep(new KeyPress('s'))).toBe(false);
  });
});

/** A key without Ctrl, Command or Alt. */
class KeyPress {
  readonly ctrlKey = false;
  readonly metaKey = false;
  readonly altKey = false;
  readonly key: string;
  constructor(key: string) {
    this.key = key;
  }
}

describe('fine', () => {
  it('ticks the cell, and takes a tick away again', async () => {
    const bench = await reviewBench();
    bench.moveTo('eccentricTempo', 1);
    await bench.run('fine');
    const ticked = await reviewBench({
      entries: [squatEntry({ ticks: [{ clip: 'c1', criterion: 'eccentricTempo', reps: [1] }] })],
    });
    ticked.moveTo('eccentricTempo', 1);
    await ticked.run('fine');
    const tick = { clipId: 'c1', criterion: 'eccentricTempo', reps: [1] };
    expect(bench.rackside.askedFor('ticks.set')).toEqual([{ ...tick, fine: true }]);
    expect(ticked.rackside.askedFor('ticks.set')).toEqual([{ ...tick, fine: false }]);
  });
});

describe('the rest being fine', () => {
  it('ticks in one act whatever is not marked on the clip: the whole set where nothing of a criterion is', async () => {
    const bench = await reviewBench({
      entries: [squatEntry({ ticks: [{ clip: 'c1', criterion: 'depth', reps: [2] }] })],
      answers: { 'ticks.setMany': () => changed },
    });
    await bench.run('fineRest');
    const [asked] = bench.rackside.askedFor('ticks.setMany');
    expect(asked).toMatchObject({ clipId: 'c1' });
    expect(asked).toHaveProperty('ticks', expect.arrayContaining([{ criterion: 'depth', reps: [1, 3] }]));
    expect(asked).toHaveProperty('ticks', expect.arrayContaining([{ criterion: 'eccentricTempo', reps: 'set' }]));
  });

  it('is refused once everything is looked at, and so is the next cell', async () => {
    const seen = await reviewBench();
    const ticks = seen.context.stage?.grade.criteria.map(({ criterion }) => ({
      clip: 'c1',
      criterion,
      reps: 'set' as const,
    }));
    const bench = await reviewBench({ entries: [squatEntry({ ticks: ticks ?? [] })] });
    expect(bench.reasonAgainst('fineRest')).toMatch(/has been looked at/);
    expect(bench.reasonAgainst('nextUnseen')).toMatch(/has been looked at/);
  });

  it('leaves out the cells that are looked at on the way to the next one', async () => {
    const first = await reviewBench();
    const criteria = first.context.stage?.grade.criteria.map(({ criterion }) => criterion) ?? [];
    const [looked, next] = criteria;
    const bench = await reviewBench({
      entries: [squatEntry({ ticks: [{ clip: 'c1', criterion: looked ?? '', reps: 'set' }] })],
    });
    bench.moveTo(looked ?? '', 1);
    await bench.run('nextUnseen');
    expect(bench.context.cursor).toMatchObject({ criterion: next, column: { clipId: 'c1', rep: 1 } });
  });
});
