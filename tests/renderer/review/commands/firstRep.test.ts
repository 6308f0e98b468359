import { describe, expect, it } from 'vitest';
import { goToFirstRep } from '../../../../renderer/review/commands/moving.ts';
import { playerState } from '../../../../renderer/review/state/playerState.ts';
import { reviewBench } from '../../harness/reviewBench.ts';

// The bench's reps start at frames 10, 60 and 110 and last forty frames each.
describe('once a clip has its first reps', () => {
  it('the cursor goes from the whole set to rep 1, and a picture outside of reps with it', async () => {
    const bench = await reviewBench({ frame: 0 });
    bench.moveTo('eccentricTempo', 'set');
    goToFirstRep(bench.context);
    expect(bench.context.cursor).toMatchObject({ criterion: 'eccentricTempo', column: { clipId: 'c1', rep: 1 } });
    expect(bench.player.log).toEqual(['seek 10']);
  });

  it('a picture in a rep, or one that plays, stays where it is', async () => {
    const bench = await reviewBench({ frame: 70 });
    bench.moveTo('eccentricTempo', 'set');
    goToFirstRep(bench.context);
    expect(bench.player.log).toEqual([]);
    const playing = await reviewBench({ frame: 0 });
    playerState.setState({ playing: 'forwards' });
    playing.moveTo('eccentricTempo', 'set');
    goToFirstRep(playing.context);
    expect(playing.context.cursor.column).toEqual({ clipId: 'c1', rep: 1 });
    expect(playing.player.log).toEqual([]);
  });

  it('a cursor that is on a rep already stays there', async () => {
    const bench = await reviewBench({ frame: 0 });
    bench.moveTo('eccentricTempo', 3);
    goToFirstRep(bench.context);
    expect(bench.context.cursor.column).toEqual({ clipId: 'c1', rep: 3 });
  });
});
