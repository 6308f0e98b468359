import { describe, expect, it } from 'vitest';
import { statusState } from '../../../../renderer/bridge/statusState.ts';
import { reviewCommands } from '../../../../renderer/review/commands/reviewCommands.ts';
import { coverState, drawingState } from '../../../../renderer/review/state/pictureTools.ts';
import { screenState } from '../../../../renderer/state/screenState.ts';
import { depthFlag, reviewBench, squatEntry } from '../../harness/reviewBench.ts';

const words = (sentence: string) => ({ id: 'asWritten', values: { sentence } });

describe('undo and redo', () => {
  it('ask for one step of the session', async () => {
    const bench = await reviewBench({
      review: { history: { undo: words('Flag: Short of depth'), redo: words('Rep 3') } },
    });
    await bench.run('undo');
    await bench.run('redo');
    expect(bench.rackside.askedFor('history.undo')).toEqual([{ sessionId: 's1' }]);
    expect(bench.rackside.askedFor('history.redo')).toEqual([{ sessionId: 's1' }]);
  });

  it('are refused where there is nothing to undo or redo, unless something is being saved', async () => {
    const bench = await reviewBench();
    expect(bench.reasonAgainst('undo')).toMatch(/nothing to undo/);
    expect(bench.reasonAgainst('redo')).toMatch(/nothing to redo/);
    statusState.getState().saveBegan();
    expect(bench.availability('undo').can).toBe(true);
  });
});

describe('going on from a session', () => {
  it('goes to its letter, and to handing it over once there is a grade', async () => {
    const bench = await reviewBench();
    expect(bench.reasonAgainst('handOver')).toMatch(/no grade to hand over yet/);
    await bench.run('letter');
    expect(screenState.getState().screen).toEqual({ kind: 'letter', sessionId: 's1' });

    const criteria = bench.context.stage?.grade.criteria ?? [];
    const judged = await reviewBench({
      entries: [squatEntry({ ticks: criteria.map(({ criterion }) => ({ clip: 'c1', criterion, reps: 'set' })) })],
    });
    await judged.run('handOver');
    expect(screenState.getState().screen).toEqual({ kind: 'handover', sessionIds: ['s1'], from: 's1' });
  });

  it('is refused for a second look', async () => {
    const bench = await reviewBench({ review: { secondLookOf: 's0' } });
    expect(bench.reasonAgainst('letter')).toMatch(/no letter of its own/);
    expect(bench.reasonAgainst('handOver')).toMatch(/can’t be handed over/);
  });
});

describe('the tools over the picture', () => {
  it('take each other’s place, and pause the clip', async () => {
    const bench = await reviewBench();
    await bench.run('draw');
    expect(drawingState.getState()).toMatchObject({ drawing: 'on', focusNext: 'tools' });
    await bench.run('cover');
    expect([drawingState.getState().drawing, coverState.getState().covering]).toEqual(['off', 'on']);
    await bench.run('setUp');
    expect(coverState.getState().covering).toBe('off');
    expect(bench.player.log).toEqual(['pause', 'pause', 'pause']);
  });
});

describe('a session from another coach’s Rackside', () => {
  const changing = reviewCommands.filter(({ readOnly }) => readOnly === 'refused').map(({ id }) => id);
  const looking = reviewCommands.filter(({ readOnly }) => readOnly === 'allowed').map(({ id }) => id);

  it.each(changing)('refuses to change anything: %s', async (id) => {
    const bench = await reviewBench({
      entries: [squatEntry({ flags: [depthFlag()] })],
      review: { readOnly: true, history: { undo: words('Flag'), redo: words('Flag') } },
    });
    bench.moveTo('depth', 2);
    expect(bench.reasonAgainst(id)).toBe(
      'This session came from another coach’s Rackside: it can be read here, not changed.',
    );
    const asked = bench.rackside.asked.length;
    await bench.run(id);
    expect(bench.rackside.asked).toHaveLength(asked);
  });

  it('allows whatever only looks', () => {
    expect(looking).toEqual(
      expect.arrayContaining(['play', 'frameOn', 'cellLeft', 'goToFlag', 'panel', 'compare', 'layerPath']),
    );
    for (const id of ['fine', 'adjust', 'markStart', 'measure', 'draw', 'cover', 'undo', 'acceptSuggestion']) {
      expect(changing, id).toContain(id);
    }
  });
});

describe('a refused command', () => {
  it('says its reason in the status line, until the next one runs', async () => {
    const bench = await reviewBench();
    bench.moveTo('depth', 2);
    await bench.run('goToFlag');
    expect(statusState.getState().notice).toBe('This cell has no flag.');
    await bench.run('play');
    expect(statusState.getState().notice).toBe('');
  });

  it('never takes away what another part has told', async () => {
    const bench = await reviewBench();
    statusState.getState().tell('The disk is full.');
    await bench.run('play');
    expect(statusState.getState().notice).toBe('The disk is full.');
  });
});
