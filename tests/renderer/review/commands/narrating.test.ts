// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Narration } from '../../../../electron/contract/narrations.ts';
import { statusState } from '../../../../renderer/bridge/statusState.ts';
import { deleteForGood, keepInterrupted } from '../../../../renderer/review/commands/narrating.ts';
import { narrationState } from '../../../../renderer/review/state/narrationState.ts';
import { playhead } from '../../../../renderer/review/state/playerState.ts';
import { fakeMicrophone } from '../../harness/fakeMicrophone.ts';
import { changed } from '../../harness/fakeRackside.ts';
import { reviewBench } from '../../harness/reviewBench.ts';
import { startAfresh } from '../../harness/startAfresh.ts';

const said = (change: Partial<Narration> = {}): Narration => ({
  ...{ narrationId: 'n1', madeAt: '2026-03-02T10:00:00.000Z', state: 'kept', lastsUs: 2_000_000, sizeBytes: 9 },
  track: { lastsUs: 2_000_000, frames: [[0, 4]], looks: [{ atUs: 0, near: null, drawn: [], layers: [] }], shapes: [] },
  ...change,
});

/** A review whose clip has a narration, or none. */
const reviewWith = (narration: Narration | null) =>
  reviewBench({
    frame: 42,
    answers: {
      'narrations.get': () => narration,
      'narrations.begin': () => ({ narrationId: 'n1' }),
      'narrations.append': () => changed,
      'narrations.keep': () => changed,
      'narrations.remove': () => changed,
    },
  });

/** Waits for answers, and for what is read of a recorder's data. */
const settle = () =>
  vi.waitFor(() => expect(['idle', 'recording', 'paused']).toContain(narrationState.getState().phase));

type Appended = { part: number; shown: { frames: [number, number][] }; sound: Uint8Array };

beforeEach(() => startAfresh(narrationState));
afterEach(() => vi.unstubAllGlobals());

describe('recording', () => {
  it('asks the library first, then for sound alone, and never before it is told to', async () => {
    const microphone = fakeMicrophone();
    const bench = await reviewWith(null);
    await bench.run('narrate');
    expect(microphone.asked).toEqual([]);
    await bench.run('recordNarration');
    await settle();
    expect(bench.rackside.askedFor('narrations.begin')).toEqual([{ clipId: 'c1' }]);
    expect(microphone.asked).toEqual([{ audio: { channelCount: 1 }, video: false }]);
    expect(bench.focused).toEqual(['card']);
    await bench.run('stopNarration');
  });

  it('sends what is said with what is shown, a part for each stretch between pauses, then keeps it and lets go', async () => {
    const microphone = fakeMicrophone();
    const bench = await reviewWith(null);
    await bench.run('narrate');
    await bench.run('recordNarration');
    await settle();
    playhead.setState({ frame: 43 });
    microphone.say();
    await bench.run('recordNarration');
    playhead.setState({ frame: 90 });
    playhead.setState({ frame: 91 });
    await bench.run('recordNarration');
    await settle();
    await bench.run('stopNarration');
    await vi.waitFor(() => expect(bench.rackside.askedFor('narrations.keep')).toEqual([{ narrationId: 'n1' }]));
    expect(microphone.told).toEqual(['start', 'stop', 'start', 'stop']);
    expect(microphone.isOpen()).toBe(false);
    const pieces = bench.rackside.askedFor('narrations.append') as Appended[];
    expect(pieces.map(({ part }) => part)).toEqual([0, 0, 1]);
    expect(pieces.every(({ sound }) => sound.length === 2)).toBe(true);
    // What was looked at while it was paused is no part of it; where that led is.
    expect(pieces.flatMap(({ shown }) => shown.frames.map(([, frame]) => frame))).toEqual([42, 43, 91]);
  });

  it('leaves nothing behind where there is no microphone, and says so', async () => {
    fakeMicrophone('missing');
    const bench = await reviewWith(null);
    await bench.run('narrate');
    await bench.run('recordNarration');
    await vi.waitFor(() => expect(bench.rackside.askedFor('narrations.remove')).toEqual([{ narrationId: 'n1' }]));
    await settle();
    expect(statusState.getState().notice).toMatch(/No microphone could be used/);
  });

  it.each([
    [said(), /already has a narration/],
    [said({ state: 'recording', track: null }), /already has a narration/],
  ])('is refused where something was said already', async (narration, why) => {
    const bench = await reviewWith(narration);
    await bench.run('narrate');
    expect(bench.reasonAgainst('recordNarration')).toMatch(why);
  });

  it('asks to open the bar first, where it says what happens to the voice', async () => {
    const bench = await reviewWith(null);
    expect(bench.reasonAgainst('recordNarration')).toMatch(/Open the narration bar first/);
  });
});

describe('what was said', () => {
  it('is deleted only once that was asked', async () => {
    const bench = await reviewWith(said());
    await bench.run('narrate');
    await bench.run('deleteNarration');
    expect(narrationState.getState().deleting).toBe('asked');
    expect(bench.rackside.askedFor('narrations.remove')).toEqual([]);
    await deleteForGood(bench.context);
    expect(bench.rackside.askedFor('narrations.remove')).toEqual([{ narrationId: 'n1' }]);
  });

  it('is kept after an interruption', async () => {
    const bench = await reviewWith(said({ state: 'recording', track: null }));
    await bench.run('narrate');
    expect(bench.reasonAgainst('listenToNarration')).toMatch(/no narration yet/);
    await keepInterrupted(bench.context);
    expect(bench.rackside.askedFor('narrations.keep')).toEqual([{ narrationId: 'n1' }]);
  });
});
