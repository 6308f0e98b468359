// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Job } from '../../electron/contract/jobs.ts';
import type { Settings } from '../../electron/contract/settings.ts';
import { statusState } from '../../renderer/bridge/statusState.ts';
import { closeWhenUnused } from '../../renderer/closeUnused.ts';
import { narrationState } from '../../renderer/review/state/narrationState.ts';
import { jobsState } from '../../renderer/state/jobsState.ts';
import { settingsState } from '../../renderer/state/settingsState.ts';
import { usualSettings } from '../electron/contract/usualSettings.ts';
import { startAfresh } from './harness/startAfresh.ts';

const minute = 60_000;
let nowMs = 0;
const close = vi.fn();
let unused: ReturnType<typeof closeWhenUnused>;

/** Lets time pass as the window does: with a look every five seconds. */
function pass(milliseconds: number): void {
  for (const endMs = nowMs + milliseconds; nowMs < endMs; ) {
    nowMs += 5_000;
    unused.tick();
  }
}

const job = (state: Job['state']): Job => ({
  ...{ id: 'one', kind: 'measure', title: { id: 'measure', values: { clip: 'squat.mp4' } }, state },
  ...{ progress: null, message: null, secondsLeft: null, lineSecondsLeft: null, sessionId: null, clipId: null },
});

const set = (closeAfterMinutes: Settings['closeAfterMinutes']): void =>
  settingsState.setState({ settings: { ...usualSettings, closeAfterMinutes } });

beforeEach(() => {
  startAfresh(settingsState);
  startAfresh(statusState);
  startAfresh(jobsState);
  startAfresh(narrationState);
  close.mockReset();
  nowMs = 0;
  unused = closeWhenUnused({ close, nowMs: () => nowMs });
});
afterEach(() => unused.stop());

describe('a window that nobody uses', () => {
  it('stays open where nothing is set', () => {
    settingsState.setState({ settings: usualSettings });
    pass(600 * minute);
    expect(close).not.toHaveBeenCalled();
  });

  it('says so a minute before, then closes', () => {
    set(5);
    pass(4 * minute - 5_000);
    expect(statusState.getState().notice).toBe('');
    pass(5_000);
    expect(statusState.getState().notice).toMatch(/closes in a minute/);
    pass(minute - 5_000);
    expect(close).not.toHaveBeenCalled();
    pass(5_000);
    expect(close).toHaveBeenCalledTimes(1);
  });

  it.each(['keydown', 'pointerdown', 'pointermove', 'wheel'])(
    'stays open after a %s, which takes the warning away',
    (use) => {
      set(5);
      pass(4.5 * minute);
      window.dispatchEvent(new Event(use));
      expect(statusState.getState().notice).toBe('');
      pass(4.5 * minute);
      expect(close).not.toHaveBeenCalled();
      pass(0.5 * minute);
      expect(close).toHaveBeenCalledTimes(1);
    },
  );

  it('leaves what else was said meanwhile', () => {
    set(5);
    pass(4.5 * minute);
    statusState.getState().tell('The disk is full.');
    window.dispatchEvent(new Event('keydown'));
    expect(statusState.getState().notice).toBe('The disk is full.');
  });

  it('takes the focus out of a previewed document when it warns, so that any key is heard', () => {
    const preview = document.createElement('iframe');
    preview.tabIndex = 0;
    document.body.append(preview);
    preview.focus();
    expect(document.activeElement).toBe(preview);
    set(5);
    pass(4 * minute);
    expect(document.activeElement).not.toBe(preview);
    preview.remove();
  });

  it('closes at once after the machine slept', () => {
    set(60);
    nowMs += 480 * minute;
    unused.tick();
    expect(close).toHaveBeenCalledTimes(1);
  });
});

describe('what keeps it open', () => {
  const keepers: readonly (readonly [string, () => void, () => void])[] = [
    [
      'a job that runs',
      () => jobsState.setState({ jobs: [job('running')] }),
      () => jobsState.setState({ jobs: [job('done')] }),
    ],
    [
      'a narration',
      () => narrationState.setState({ phase: 'recording' }),
      () => narrationState.setState({ phase: 'idle' }),
    ],
    [
      'text that could not be saved',
      () => statusState.setState({ saving: 'failed' }),
      () => statusState.setState({ saving: 'saved' }),
    ],
    [
      'a video that plays',
      () => {
        const video = document.createElement('video');
        Object.defineProperty(video, 'paused', { get: () => false });
        document.body.append(video);
      },
      () => document.querySelector('video')?.remove(),
    ],
  ];
  it.each(keepers)('%s does, and its minutes begin when it is over', (_what, begin, end) => {
    set(5);
    begin();
    pass(30 * minute);
    expect(close).not.toHaveBeenCalled();
    end();
    pass(5 * minute - 5_000);
    expect(close).not.toHaveBeenCalled();
    pass(5_000);
    expect(close).toHaveBeenCalledTimes(1);
  });

  it('not a job that only waits: measuring may be paused', () => {
    set(5);
    jobsState.setState({ jobs: [job('waiting')] });
    pass(5 * minute);
    expect(close).toHaveBeenCalledTimes(1);
  });
});
