// @vitest-environment happy-dom
import { fireEvent, screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import type { Flag } from '../../../../engine/review/review.ts';
import { Strip } from '../../../../renderer/review/strip/Strip.tsx';
import { renderReview } from '../../harness/renderReview.tsx';
import { depthFlag, type ReviewBench, reviewBench, squatEntry, thirtyFps } from '../../harness/reviewBench.ts';

async function strip(flags: Flag[] = [], answers: Parameters<typeof reviewBench>[0] = {}): Promise<ReviewBench> {
  const bench = await reviewBench({ entries: [squatEntry({ flags })], ...answers });
  const { data, stage } = bench.context;
  const media = data?.media[0];
  if (stage === null || media === undefined) throw new Error('No clip is on the stage.');
  renderReview(bench, <Strip clip={stage.clip} media={media} flags={flags} table={thirtyFps} />);
  return bench;
}

describe('the strip', () => {
  it('is a slider over the clip’s frames, moved by arrows, Home and End', async () => {
    const user = userEvent.setup();
    const bench = await strip();
    const track = screen.getByRole('slider', { name: 'Position in the clip' });
    expect(track.getAttribute('aria-valuemax')).toBe('299');
    expect(track.getAttribute('aria-valuenow')).toBe('70');
    expect(track.getAttribute('aria-valuetext')).toBe('frame 70, 0:02.333');
    track.focus();
    await user.keyboard('{ArrowRight}{ArrowLeft}{Home}{End}');
    expect(bench.player.log).toEqual(['step 1 pressed', 'step -1 pressed', 'seek 0', 'seek 299']);
  });

  it('has a slider for each edge of each rep, moved by keys a frame or ten at a time', async () => {
    const user = userEvent.setup();
    const bench = await strip([], { answers: { 'reps.moveEdge': () => ({}) } });
    const edge = screen.getByRole('slider', { name: 'Stretched end of rep 2' });
    expect(edge.getAttribute('aria-valuenow')).toBe('80');
    edge.focus();
    await user.keyboard('{ArrowRight}');
    expect(bench.rackside.askedFor('reps.moveEdge')).toEqual([
      { clipId: 'c1', rep: 2, edge: 'stretchedEnd', frame: 81 },
    ]);
    await user.keyboard('{PageUp}');
    expect(bench.rackside.askedFor('reps.moveEdge').at(-1)).toMatchObject({ edge: 'stretchedEnd', frame: 70 });
    expect(bench.player.log.at(-1)).toBe('seek 70');
  });

  it('goes to a flag that is clicked', async () => {
    const bench = await strip([depthFlag()]);
    fireEvent.click(screen.getByRole('button', { name: /^Go to flag: adjust, / }));
    expect(bench.player.log).toEqual(['seek 80']);
    expect(bench.context.cursor).toMatchObject({ criterion: 'depth', flagId: 'f1' });
  });
});
