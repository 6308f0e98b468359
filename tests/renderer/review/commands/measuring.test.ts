import { describe, expect, it } from 'vitest';
import { statusState } from '../../../../renderer/bridge/statusState.ts';
import { panelState, suggestionState } from '../../../../renderer/review/state/panelState.ts';
import { playhead } from '../../../../renderer/review/state/playerState.ts';
import { layersState } from '../../../../renderer/review/state/viewState.ts';
import { pm, setOf } from '../../../engine/motion/suggest/sets.ts';
import { type ReviewBench, reviewBench, squatClip, squatEntry, suggestionOf } from '../../harness/reviewBench.ts';

describe('measuring', () => {
  it('puts the clip in line, or all clips of the session', async () => {
    const bench = await reviewBench({ entries: [squatEntry({ clips: [squatClip(), squatClip({ id: 'c2' })] })] });
    await bench.run('measure');
    await bench.run('measureAll');
    expect(bench.rackside.askedFor('measures.start')).toEqual([
      { clipIds: ['c1'], again: false },
      { clipIds: ['c1', 'c2'], again: false },
    ]);
  });

  it('is refused while no clip has been read', async () => {
    const bench = await reviewBench({ review: { media: [] } });
    expect(bench.reasonAgainst('measure')).toMatch(/No clip is ready to be measured/);
    expect(bench.reasonAgainst('measureAll')).toMatch(/No clip is ready to be measured/);
  });

  it('shows the measures in place of the card, and the card again', async () => {
    const bench = await reviewBench();
    await bench.run('panel');
    expect(panelState.getState().panel).toBe('measures');
    await bench.run('panel');
    expect(panelState.getState().panel).toBe('card');
  });

  it('hides and shows a layer once the clip was measured', async () => {
    const bench = await reviewBench();
    expect(bench.reasonAgainst('layerPath')).toMatch(/not been measured/);
    expect(bench.reasonAgainst('takeReps')).toMatch(/not been measured/);
    const measured = await reviewBench({ measures: { recordedAt: '2026-03-04T10:00:00Z' } });
    await measured.run('layerPath');
    expect(layersState.getState().hidden).toEqual(['path']);
    await measured.run('layerPath');
    expect(layersState.getState().hidden).toEqual([]);
    expect(measured.reasonAgainst('takeReps')).toBe('Measuring found no reps in this clip.');
  });
});

describe('the view that the joints show', () => {
  const fromBehind = {
    ...setOf([]),
    view: { view: 'oblique', facing: 'right', azimuthDeg: pm(137, 11), sureness: 0.99 },
  } as const;
  const seen = (view: 'side' | 'oblique' | null) =>
    reviewBench({
      entries: [squatEntry({ clips: [squatClip({ view })] })],
      measures: { recordedAt: '2026-03-04T10:00:00Z', measurement: fromBehind },
    });

  it('becomes the clip’s by an act of the coach alone', async () => {
    const bench = await seen(null);
    expect(bench.rackside.askedFor('clips.update')).toEqual([]);
    await bench.run('takeView');
    expect(bench.rackside.askedFor('clips.update')).toEqual([{ clipId: 'c1', change: { view: 'oblique' } }]);
  });

  it('is refused where the clip has it already, or the joints don’t show it', async () => {
    expect((await seen('oblique')).reasonAgainst('takeView')).toMatch(/already has this view/);
    expect((await seen('side')).availability('takeView').can).toBe(true);
    const untold = await reviewBench({ measures: { recordedAt: '2026-03-04T10:00:00Z', measurement: setOf([]) } });
    expect(untold.reasonAgainst('takeView')).toMatch(/choose the view/);
  });
});

describe('suggestions', () => {
  const proposed = () => reviewBench({ measures: { suggestions: [suggestionOf('one', 1), suggestionOf('two', 2)] } });

  it('are refused where none waits', async () => {
    const bench = await reviewBench();
    for (const id of ['nextSuggestion', 'previousSuggestion', 'acceptSuggestion', 'dismissSuggestion']) {
      expect(bench.reasonAgainst(id), id).toMatch(/no open suggestion/);
    }
  });

  it('are gone through with their moments on the stage, round at the ends', async () => {
    const bench = await proposed();
    await bench.run('nextSuggestion');
    await bench.run('nextSuggestion');
    await bench.run('nextSuggestion');
    expect(bench.player.log.filter((one) => one !== 'pause')).toEqual(['seek 30', 'seek 60', 'seek 30']);
    expect(panelState.getState().panel).toBe('measures');
  });

  /** The picture arrives where the player was sent. */
  const arrive = (bench: ReviewBench) => playhead.setState({ frame: bench.player.frame(), settled: true });

  it('are accepted only once their moment is on screen, and then show the next at its moment', async () => {
    const bench = await proposed();
    await bench.run('acceptSuggestion');
    playhead.setState({ settled: false });
    await bench.run('acceptSuggestion');
    expect(bench.rackside.askedFor('suggestions.accept')).toEqual([]);
    expect(statusState.getState().done).toMatch(/Accept it again/);
    arrive(bench);
    await bench.run('acceptSuggestion');
    expect(bench.rackside.askedFor('suggestions.accept')).toEqual([{ clipId: 'c1', suggestionId: 'one', change: {} }]);
    expect(suggestionState.getState().chosenId).toBe('two');
    expect(bench.player.frame()).toBe(60);
    expect(bench.context.cursor).toMatchObject({ criterion: 'depth', column: { clipId: 'c1', rep: 2 } });
    await bench.run('acceptSuggestion');
    expect(bench.rackside.askedFor('suggestions.accept')).toHaveLength(1);
    await bench.run('dismissSuggestion');
    expect(bench.rackside.askedFor('suggestions.dismiss')).toEqual([
      { clipId: 'c1', suggestionId: 'two', dismissed: true },
    ]);
  });

  it('are not accepted after the picture has gone on to something else', async () => {
    const bench = await proposed();
    await bench.run('nextSuggestion');
    playhead.setState({ frame: 30 + 16, settled: true });
    await bench.run('acceptSuggestion');
    expect(bench.rackside.askedFor('suggestions.accept')).toEqual([]);
    playhead.setState({ frame: 30 + 15, settled: true });
    await bench.run('acceptSuggestion');
    expect(bench.rackside.askedFor('suggestions.accept')).toHaveLength(1);
  });

  it('are accepted with what the coach changed', async () => {
    const bench = await proposed();
    await bench.run('nextSuggestion');
    arrive(bench);
    suggestionState.setState({ severity: 'prefer', reps: [1, 2] });
    await bench.run('acceptSuggestion');
    expect(bench.rackside.askedFor('suggestions.accept')).toMatchObject([
      { suggestionId: 'one', change: { severity: 'prefer', reps: [1, 2] } },
    ]);
  });
});
