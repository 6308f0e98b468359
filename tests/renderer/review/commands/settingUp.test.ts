import { describe, expect, it } from 'vitest';
import type { Click } from '../../../../engine/recording/setUp.ts';
import { chooseSetUpTool, clearClicks, setPoints } from '../../../../renderer/review/commands/settingUp.ts';
import { setUpHint, setUpPointName, setUpToolName } from '../../../../renderer/review/setUp/setUpTools.ts';
import { pointsWanted, setUpState, setUpTools } from '../../../../renderer/review/state/pictureTools.ts';
import { reviewBench } from '../../harness/reviewBench.ts';

const answers = { 'measures.click': () => ({ jobId: 'j1' }), 'measures.clearClicks': () => ({ jobId: 'j2' }) };

describe('pointing out', () => {
  it.each(['disc', 'point', 'lifter'] as const)('the %s sends one click at the frame on screen', async (what) => {
    const bench = await reviewBench({ answers, frame: 42 });
    await bench.run('setUp');
    chooseSetUpTool(what);
    setUpState.setState({ points: [{ xPx: 300, yPx: 500 }] });
    await setPoints(bench.context);
    const click: Click = { frame: 42, what, at: { xPx: 300, yPx: 500 } };
    expect(bench.rackside.askedFor('measures.click')).toEqual([{ clipId: 'c1', click }]);
    expect(setUpState.getState().points).toEqual([]);
  });

  it('a box round the disc, from any corner, sends a click on its middle with the box', async () => {
    const bench = await reviewBench({ answers, frame: 42 });
    await bench.run('setUp');
    chooseSetUpTool('discBox');
    setUpState.setState({
      points: [
        { xPx: 340, yPx: 200 },
        { xPx: 300, yPx: 320 },
      ],
    });
    await setPoints(bench.context);
    const box = { leftPx: 300, topPx: 200, rightPx: 340, bottomPx: 320 };
    const click: Click = { frame: 42, what: 'disc', at: { xPx: 320, yPx: 260 }, box };
    expect(bench.rackside.askedFor('measures.click')).toEqual([{ clipId: 'c1', click }]);
  });

  it('nothing sends nothing', async () => {
    const bench = await reviewBench({ answers });
    await bench.run('setUp');
    chooseSetUpTool('lifter');
    await setPoints(bench.context);
    expect(bench.rackside.askedFor('measures.click')).toEqual([]);
  });

  it('is forgotten by its kind', async () => {
    const bench = await reviewBench({ answers });
    await clearClicks('lifter');
    expect(bench.rackside.askedFor('measures.clearClicks')).toEqual([{ clipId: 'c1', what: 'lifter' }]);
  });

  it('has a name, a hint and a name for each point of every tool', () => {
    for (const tool of setUpTools) {
      expect(setUpToolName(tool)).not.toBe('');
      expect(setUpHint(tool)).toMatch(/\.$/);
      const names = Array.from({ length: pointsWanted[tool] }, (_, index) => setUpPointName(tool, index));
      expect(names.every((name) => name !== '')).toBe(true);
      expect(setUpPointName(tool, pointsWanted[tool])).toBe('');
    }
  });
});
