import { describe, expect, it } from 'vitest';
import { playerState } from '../../../../renderer/review/state/playerState.ts';
import { stripState, zoomState } from '../../../../renderer/review/state/viewState.ts';
import { screenState } from '../../../../renderer/state/screenState.ts';
import { reviewBench } from '../../harness/reviewBench.ts';

describe('playing', () => {
  it.each([
    ['play', 'pressed', 'toggle'],
    ['playBackwards', 'pressed', 'play backwards'],
    ['frameBack', 'pressed', 'step -1 pressed'],
    ['frameOn', 'held', 'step 1 held'],
    ['framesBack', 'pressed', 'step -10 pressed'],
    ['framesOn', 'held', 'step 10 held'],
  ] as const)('%s asks the player: %s', async (id, press, asked) => {
    const bench = await reviewBench();
    await bench.run(id, press);
    expect(bench.player.log).toEqual([asked]);
  });

  it('pauses where it plays backwards already', async () => {
    const bench = await reviewBench();
    playerState.setState({ playing: 'backwards' });
    await bench.run('playBackwards');
    expect(bench.player.log).toEqual(['pause']);
  });

  it('changes speed one step at a time, and is refused at both ends', async () => {
    const bench = await reviewBench();
    await bench.run('slower');
    expect(bench.player.log).toEqual(['speed 0.75']);
    expect(bench.context.speed).toBe(0.75);
    bench.context.setSpeed(2);
    expect(bench.reasonAgainst('faster')).toBe('This is the fastest speed.');
    bench.context.setSpeed(0.1);
    expect(bench.reasonAgainst('slower')).toBe('This is the slowest speed.');
  });

  it('is refused while nothing can play', async () => {
    const bench = await reviewBench({ frame: null });
    for (const id of ['play', 'playBackwards', 'frameBack', 'frameOn', 'slower']) {
      expect(bench.reasonAgainst(id), id).toMatch(/can’t play yet/);
    }
  });
});

describe('repeating', () => {
  it('repeats the rep of the cursor, and stops', async () => {
    const bench = await reviewBench({ frame: 15 });
    bench.moveTo('depth', 2);
    await bench.run('loop');
    await bench.run('loop');
    expect(bench.player.log).toEqual(['loop 60-100', 'no loop']);
  });

  it('repeats the rep on screen where the cursor is on the whole set', async () => {
    const bench = await reviewBench({ frame: 15 });
    bench.moveTo('depth', 'set');
    await bench.run('loop');
    expect(bench.player.log).toEqual(['loop 10-50']);
  });

  it('marks a range by its two ends; an end before the beginning moves that along', async () => {
    const bench = await reviewBench({ frame: 100 });
    expect(bench.reasonAgainst('loopRange')).toMatch(/No section is marked yet/);
    await bench.run('rangeFirst');
    bench.player.seekTo(40);
    await bench.run('rangeLast');
    expect(bench.player.log).toEqual(['loop 100-299', 'seek 40', 'loop 40-40']);
    await bench.run('loopRange');
    expect(playerState.getState()).toMatchObject({ loops: 'nothing', range: { clipId: 'c1', first: 40, last: 40 } });
  });
});

describe('looking', () => {
  it('goes closer and back, and says so when the whole picture shows', async () => {
    const bench = await reviewBench();
    zoomState.getState().setStage({ width: 400, height: 300 });
    expect(bench.reasonAgainst('further')).toMatch(/whole picture is in view already/);
    expect(bench.reasonAgainst('panLeft')).toMatch(/zoom in first/);
    await bench.run('closer');
    expect(zoomState.getState().zoom.scale).toBeCloseTo(Math.SQRT2);
    await bench.run('panLeft');
    await bench.run('wholePicture');
    expect(zoomState.getState().zoom).toEqual({ scale: 1, x: 0, y: 0 });
  });

  it('shows half of what the strip showed, and all of it again', async () => {
    const bench = await reviewBench();
    await bench.run('stripCloser');
    expect(stripState.getState().window).toEqual({ from: 0.25, to: 0.75 });
    await bench.run('stripFurther');
    expect(stripState.getState().window).toEqual({ from: 0, to: 1 });
  });

  it('goes to compare the rep on screen', async () => {
    const bench = await reviewBench({ frame: 70 });
    await bench.run('compare');
    expect(screenState.getState().screen).toEqual({ kind: 'compare', sessionId: 's1', clipId: 'c1', rep: 2 });
  });
});
