import { describe, expect, it } from 'vitest';
import { reviewState } from '../../../../renderer/state/reviewState.ts';
import { reviewBench, squatClip, squatEntry } from '../../harness/reviewBench.ts';

const twoSets = () => [squatEntry({ clips: [squatClip(), squatClip({ id: 'c2', name: 'Squat, second set' })] })];

describe('moving over the scorecard', () => {
  it('shows another rep at its start, or at its stretched end where depth is judged', async () => {
    const bench = await reviewBench({ frame: 20 });
    bench.moveTo('eccentricTempo', 1);
    await bench.run('cellRight');
    bench.moveTo('depth', 2);
    await bench.run('cellRight');
    expect(bench.player.log).toEqual(['seek 60', 'seek 130']);
    expect(bench.context.cursor).toMatchObject({ criterion: 'depth', column: { clipId: 'c1', rep: 3 } });
  });

  it('stays at the frame on screen when it moves to another criterion of the same rep', async () => {
    const bench = await reviewBench();
    bench.moveTo('depth', 2);
    await bench.run('cellDown');
    expect(bench.context.cursor.criterion).not.toBe('depth');
    expect(bench.player.log).toEqual([]);
  });

  it('leaves the picture alone where it shows that rep already', async () => {
    const bench = await reviewBench({ frame: 70 });
    bench.moveTo('eccentricTempo', 1);
    await bench.run('cellRight');
    expect(bench.context.cursor.column).toEqual({ clipId: 'c1', rep: 2 });
    expect(bench.player.log).toEqual([]);
  });

  it('goes by where a seek is heading, not by what it left', async () => {
    const bench = await reviewBench({ frame: 70 });
    bench.moveTo('eccentricTempo', 2);
    await bench.run('cellRight');
    await bench.run('cellLeft');
    expect(bench.player.log).toEqual(['seek 110', 'seek 60']);
  });

  it('goes to the whole set and to the last rep', async () => {
    const bench = await reviewBench();
    bench.moveTo('eccentricTempo', 2);
    await bench.run('cellFirst');
    expect(bench.context.cursor.column).toEqual({ clipId: 'c1', rep: 'set' });
    await bench.run('cellLast');
    expect(bench.context.cursor.column).toEqual({ clipId: 'c1', rep: 3 });
  });

  it('puts the next clip on the stage when it moves beyond this one', async () => {
    const bench = await reviewBench({ entries: twoSets() });
    bench.moveTo('eccentricTempo', 3);
    await bench.run('cellRight');
    await bench.run('cellRight');
    expect(bench.context.cursor.column).toEqual({ clipId: 'c2', rep: 1 });
    expect(reviewState.getState()).toMatchObject({ clipId: 'c2', pendingSeek: { clipId: 'c2', frame: 0 } });
  });

  it('is refused in a session without clips', async () => {
    const bench = await reviewBench({ entries: [squatEntry({ clips: [] })] });
    expect(bench.reasonAgainst('cellLeft')).toMatch(/No clip is open/);
  });
});

describe('moving from clip to clip', () => {
  it('shows the next clip from its first frame, and is refused at the ends', async () => {
    const bench = await reviewBench({ entries: twoSets() });
    expect(bench.reasonAgainst('previousClip')).toBe('This is the first clip of the session.');
    await bench.run('nextClip');
    expect(reviewState.getState()).toMatchObject({ clipId: 'c2', pendingSeek: { clipId: 'c2', frame: 0 } });
    expect(bench.reasonAgainst('nextClip')).toBe('This is the last clip of the session.');
  });
});
