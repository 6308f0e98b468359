// @vitest-environment happy-dom
import { beforeEach, describe, expect, it } from 'vitest';
import { layoutState, shapeOf } from '../../../../renderer/review/state/layoutState.ts';
import { panelState } from '../../../../renderer/review/state/panelState.ts';
import { reviewBench, squatEntry } from '../../harness/reviewBench.ts';

beforeEach(() => localStorage.clear());

describe('dividing the window', () => {
  it('moves the divider from where it is on screen, and keeps it for clips of that shape', async () => {
    const bench = await reviewBench();
    layoutState.getState().showShare(0.4);
    await bench.run('pictureWider');
    // The bench's clip is 1080 × 1920.
    expect(layoutState.getState().shares.portrait).toBeCloseTo(0.43, 9);
    expect(layoutState.getState().shares.landscape).toBeNull();
    expect(Number(localStorage.getItem('rackside.picture.portrait'))).toBeCloseTo(0.43, 9);
    await bench.run('pictureNarrower');
    expect(layoutState.getState().shares.portrait).toBeCloseTo(0.37, 9);
    await bench.run('pictureByItself');
    expect(layoutState.getState().shares.portrait).toBeNull();
  });

  it('gives the picture the window, and takes it back, by one key', async () => {
    const bench = await reviewBench();
    await bench.run('largePicture');
    expect(layoutState.getState().large).toBe(true);
    expect(bench.reasonAgainst('pictureWider')).toBe('The picture fills the window: show the scorecard first.');
    await bench.run('largePicture');
    expect(layoutState.getState().large).toBe(false);
  });

  it('goes from a large picture to the measures, and from there to the card', async () => {
    const bench = await reviewBench();
    await bench.run('largePicture');
    await bench.run('panel');
    expect([layoutState.getState().large, panelState.getState().panel]).toEqual([false, 'measures']);
    await bench.run('panel');
    expect(panelState.getState().panel).toBe('card');
  });

  it('is refused while no clip is there', async () => {
    const bench = await reviewBench({ entries: [squatEntry({ clips: [] })] });
    expect(bench.reasonAgainst('largePicture')).toMatch(/clip/);
  });

  it.each([
    [{ width: 1920, height: 1080 }, 'landscape'],
    [{ width: 1080, height: 1920 }, 'portrait'],
    [{ width: 1080, height: 1080 }, 'landscape'],
    [{ width: 0, height: 0 }, 'landscape'],
  ] as const)('tells the shape of a picture of %o', (size, shape) => {
    expect(shapeOf(size)).toBe(shape);
  });
});
