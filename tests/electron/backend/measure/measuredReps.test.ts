import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  edgesOf,
  manualReps,
  matchReps,
  momentAt,
  secondsOf,
} from '../../../../electron/backend/measure/measuredReps.ts';
import type { RepRow } from '../../../../electron/backend/store/reps.ts';
import type { PhaseSpans, RepMeasurement } from '../../../../engine/motion/measurement.ts';
import type { FrameTable } from '../../../../engine/time/frameTable.ts';

/** 10 s at 25 frames a second, the first frame 2 s into the container's time. */
const table: FrameTable = {
  timeBase: { numerator: 1, denominator: 1000 },
  ticks: Array.from({ length: 250 }, (_, frame) => 2000 + frame * 40),
  endTicks: 12_000,
};

type Edges = { start: number; stretchedEnd?: number; end?: number; measured?: boolean };

function row(id: string, { start, stretchedEnd, end, measured = false }: Edges): RepRow {
  const edge = (name: string, frame: number | undefined) => ({
    [`${name}_frame`]: frame ?? null,
    [`${name}_ticks`]: frame === undefined ? null : (table.ticks[frame] ?? 0),
    [`${name}_seconds`]: null,
  });
  const by = measured ? 1 : 0;
  return {
    id,
    clip_id: 'c',
    same_rep: null,
    ...edge('start', start),
    ...edge('stretched_end', stretchedEnd),
    ...edge('end', end),
    start_measured: by,
    stretched_end_measured: by,
    end_measured: by,
  };
}

function rep(index: number, startS: number, endS: number, phases: Partial<PhaseSpans> = {}): RepMeasurement {
  const none = { eccentric: null, pauseStretched: null, concentric: null, pauseShortened: null };
  return {
    index,
    startS,
    endS,
    phases: { ...none, ...phases },
    durationsS: none,
    sureness: 1,
    doubts: [],
    manualEdges: [],
    reach: null,
    romM: null,
    meanConcentricMps: null,
    peakConcentricMps: null,
    peakSpeedAtS: null,
    driftForwardM: null,
    driftBackM: null,
    largestDeviation: null,
    bounces: null,
    downOnWayUpM: null,
    joints: null,
  };
}

describe('times from the clip’s first frame', () => {
  it('count from the first frame’s time, and come back to the same frame', () => {
    expect(secondsOf({ frame: 0, ticks: 2000 }, table)).toBe(0);
    expect(momentAt(1, table)).toEqual({ frame: 25, ticks: 3000 });
    fc.assert(
      fc.property(fc.nat({ max: 249 }), (frame) => {
        const ticks = table.ticks[frame] ?? 0;
        expect(momentAt(secondsOf({ frame, ticks }, table), table)).toEqual({ frame, ticks });
      }),
    );
  });

  it('are the nearest frame’s, also before the first and after the last', () => {
    expect(momentAt(1.021, table).frame).toBe(26);
    expect(momentAt(-3, table).frame).toBe(0);
    expect(momentAt(99, table).frame).toBe(249);
  });
});

describe('edges that a person set', () => {
  it('are those that were not measured, one item a rep that has any', () => {
    const own = row('a', { start: 25, stretchedEnd: 50 });
    const mixed = { ...row('b', { start: 75, stretchedEnd: 90, end: 100, measured: true }), end_measured: 0 };
    const measured = row('c', { start: 120, end: 150, measured: true });
    expect(manualReps([own, mixed, measured], table)).toEqual([{ startS: 1, stretchedEndS: 2 }, { endS: 4 }]);
  });
});

describe('the edges of a measured rep', () => {
  it('have the stretched end where the eccentric ends', () => {
    const phases = { eccentric: { startS: 1, endS: 2 }, concentric: { startS: 2.2, endS: 3 } };
    const edges = edgesOf(rep(1, 1, 3, phases), table);
    expect([edges.start.frame, edges.stretched_end?.frame, edges.end.frame]).toEqual([25, 50, 75]);
  });

  it('have none where the eccentric ends with the rep', () => {
    const phases = { concentric: { startS: 1, endS: 2 }, eccentric: { startS: 2, endS: 3 } };
    expect(edgesOf(rep(1, 1, 3, phases), table).stretched_end).toBeUndefined();
  });
});

describe('which rep a measured one is', () => {
  it('is the one it shares its time with, also where numbers differ', () => {
    const rows = [row('second', { start: 78, end: 125 }), row('third', { start: 150, end: 200 })];
    const matches = matchReps([rep(1, 1, 2), rep(2, 3, 5), rep(3, 6, 8)], rows, table);
    expect([...matches].map(([index, { id }]) => [index, id])).toEqual([
      [3, 'third'],
      [2, 'second'],
    ]);
  });

  it('is found for a rep whose end is not marked: it lasts until the next', () => {
    const rows = [row('open', { start: 25 }), row('last', { start: 100 })];
    const matches = matchReps([rep(1, 1, 3), rep(2, 4, 6)], rows, table);
    expect(matches.get(1)?.id).toBe('open');
    expect(matches.get(2)?.id).toBe('last');
  });

  it('is no rep twice', () => {
    const spans = fc.array(fc.tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 2, max: 49 })), {
      maxLength: 6,
    });
    fc.assert(
      fc.property(spans, spans, (marked, measured) => {
        const rows = marked
          .toSorted(([one], [other]) => one - other)
          .map(([start, frames], place) => row(`r${place}`, { start, end: start + frames }));
        const reps = measured.map(([start, frames], place) => rep(place + 1, start / 25, (start + frames) / 25));
        const ids = [...matchReps(reps, rows, table).values()].map(({ id }) => id);
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });
});
