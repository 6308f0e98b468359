// @vitest-environment happy-dom
import { screen } from '@testing-library/react';
import { userEvent } from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { statusState } from '../../../../renderer/bridge/statusState.ts';
import { Readout } from '../../../../renderer/review/stage/Readout.tsx';
import { renderReview } from '../../harness/renderReview.tsx';
import { reviewBench, squatClip, thirtyFps } from '../../harness/reviewBench.ts';

describe('the time code', () => {
  it('labels the frame on screen, and goes to a label that is typed', async () => {
    const user = userEvent.setup();
    const bench = await reviewBench({ frame: 70 });
    renderReview(bench, <Readout clip={squatClip()} table={thirtyFps} />);
    const field = screen.getByRole('textbox', { name: 'Time code' });
    expect(field).toHaveProperty('value', '00:00:02:10');
    await user.click(field);
    await user.keyboard('00:00:05:01{Enter}');
    expect(bench.player.log).toEqual(['pause', 'seek 151']);
    expect(document.activeElement).not.toBe(field);
  });

  it('says which one is the last when a label is none of this clip', async () => {
    const user = userEvent.setup();
    const bench = await reviewBench({ frame: 70 });
    renderReview(bench, <Readout clip={squatClip()} table={thirtyFps} />);
    await user.click(screen.getByRole('textbox', { name: 'Time code' }));
    await user.keyboard('00:00:10:00{Enter}');
    expect(bench.player.log).toEqual([]);
    expect(statusState.getState().notice).toContain('the last one is 00:00:09:29');
    await user.keyboard('{Escape}');
    expect(screen.getByRole('textbox', { name: 'Time code' })).toHaveProperty('value', '00:00:02:10');
  });

  it('is missing where frames don’t come at a rate of time codes', async () => {
    const bench = await reviewBench();
    renderReview(bench, <Readout clip={squatClip()} table={{ ...thirtyFps, ticks: [0, 3, 4, 20], endTicks: 24 }} />);
    expect(screen.queryByRole('textbox', { name: 'Time code' })).toBeNull();
  });

  it('and the frames, times and count beside it begin with what a trimmed clip shows', async () => {
    const user = userEvent.setup();
    const bench = await reviewBench({ frame: 70 });
    // Frames 60 to 119 of the footage, two seconds each of thirty frames.
    const tick = (frame: number) => ({ frame, ticks: thirtyFps.ticks[frame] ?? 0 });
    const clip = { ...squatClip(), section: { from: tick(60), to: tick(119) } };
    renderReview(bench, <Readout clip={clip} table={thirtyFps} />);
    expect(screen.getByTestId('frame-number').textContent).toBe('10');
    expect(screen.getByText('of 60')).toBeTruthy();
    expect(screen.getByTestId('media-time').textContent).toBe('0:00.333');
    const field = screen.getByRole('textbox', { name: 'Time code' });
    expect(field).toHaveProperty('value', '00:00:00:10');
    await user.click(field);
    await user.keyboard('00:00:02:00{Enter}');
    expect(statusState.getState().notice).toContain('the last one is 00:00:01:29');
    await user.clear(field);
    await user.type(field, '00:00:01:05{Enter}');
    expect(bench.player.log).toEqual(['pause', 'seek 95']);
  });
});
