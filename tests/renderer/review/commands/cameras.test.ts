import { describe, expect, it } from 'vitest';
import { statusState } from '../../../../renderer/bridge/statusState.ts';
import { scorecardModel } from '../../../../renderer/review/model/scorecardModel.ts';
import { playhead } from '../../../../renderer/review/state/playerState.ts';
import { reviewState } from '../../../../renderer/state/reviewState.ts';
import { depthFlag, reviewBench, squatClip, squatEntry } from '../../harness/reviewBench.ts';

/** The front camera was started a second, thirty frames, before the side camera. */
const front = squatClip({ id: 'c2', name: 'Front', view: 'front', sameSet: { clip: 'c1', offsetUs: 1_000_000 } });
const together = () => squatEntry({ clips: [squatClip(), front] });
const apart = () => squatEntry({ clips: [squatClip(), squatClip({ id: 'c2', name: 'Front', view: 'front' })] });

const asked = (bench: Awaited<ReturnType<typeof reviewBench>>, name: string) =>
  bench.rackside.asked.filter((one) => one.name === name).map(({ params }) => params);

describe('two cameras of one set on the card', () => {
  it('have one column a rep, of the clip on the stage, with the flags of both', async () => {
    const entry = squatEntry({
      clips: [squatClip(), front],
      flags: [depthFlag(), depthFlag({ id: 'f2', clip: 'c2' })],
    });
    const bench = await reviewBench({ entries: [entry] });
    const { stage } = bench.context;
    if (stage === null) throw new Error('No clip is on the stage.');
    for (const onStage of ['c1', 'c2']) {
      const { columns, rows } = scorecardModel(stage.entry, stage.grade, stage.catalogue, onStage);
      expect(columns.map(({ column }) => column)).toEqual(['set', 1, 2, 3].map((rep) => ({ clipId: onStage, rep })));
      const cell = rows.find(({ criterion }) => criterion === 'depth')?.cells[2];
      expect(cell?.flags.map(({ id }) => id)).toEqual(['f1', 'f2']);
      expect(cell?.score).not.toBeNull();
    }
  });

  it('take a tick back from whichever clip holds it', async () => {
    const ticks = [{ clip: 'c2', criterion: 'depth', reps: [2] }];
    const bench = await reviewBench({
      entries: [squatEntry({ clips: [squatClip(), front], ticks })],
      answers: { 'ticks.set': () => ({}) },
    });
    bench.moveTo('depth', 2);
    await bench.run('fine');
    expect(asked(bench, 'ticks.set')).toEqual([{ clipId: 'c2', criterion: 'depth', reps: [2], fine: false }]);
  });
});

describe('the other camera', () => {
  it('comes on the stage at the same moment, on the same rep', async () => {
    const bench = await reviewBench({ entries: [together()], frame: 70 });
    bench.moveTo('depth', 2);
    await bench.run('otherCamera');
    expect(reviewState.getState()).toMatchObject({ clipId: 'c2', pendingSeek: { clipId: 'c2', frame: 100 } });
  });

  it('is moved by a frame against the one on the stage', async () => {
    const bench = await reviewBench({
      entries: [together()],
      frame: 70,
      answers: { 'cameras.pair': () => ({ by: 'frames' }) },
    });
    await bench.run('otherLater');
    expect(asked(bench, 'cameras.pair')).toEqual([
      { leadId: 'c1', clipId: 'c2', by: { how: 'frames', leadFrame: 70, frame: 101 } },
    ]);
  });

  it('is refused where one camera alone shows the set', async () => {
    const bench = await reviewBench({ entries: [apart()] });
    expect(bench.reasonAgainst('otherCamera')).toMatch(/^Only one camera shows this set/);
  });
});

describe('laying two clips together', () => {
  const answers = { 'cameras.pair': () => ({ by: 'sound' as const }) };

  it('asks for it by itself, the first clip of the exercise leading, and says by what they lie together', async () => {
    const bench = await reviewBench({ entries: [apart()], answers });
    await bench.run('layCameras');
    expect(asked(bench, 'cameras.pair')).toEqual([{ leadId: 'c1', clipId: 'c2' }]);
    expect(statusState.getState().done).toContain('lined up by their sound');
  });

  it('takes the same moment pointed out in both, in either order', async () => {
    const bench = await reviewBench({ entries: [apart()], frame: 70, answers });
    const show = (clipId: string, frame: number): void => {
      reviewState.getState().show({ clipId, frame });
      playhead.setState({ clipId, frame, settled: true, picture: 'video' });
    };
    show('c2', 100);
    await bench.run('sameMoment');
    expect(asked(bench, 'cameras.pair')).toEqual([]);
    show('c1', 70);
    await bench.run('sameMoment');
    expect(asked(bench, 'cameras.pair')).toEqual([
      { leadId: 'c1', clipId: 'c2', by: { how: 'frames', leadFrame: 70, frame: 100 } },
    ]);
  });

  it('is refused where no clip of the exercise lies beside this one', async () => {
    const bench = await reviewBench();
    expect(bench.reasonAgainst('layCameras')).toMatch(/No clip next to this one/);
  });
});
