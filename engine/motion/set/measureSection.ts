import { type FrameRange, holds, isWhole, tableOf } from '../../framing/section.ts';
import { recordingOfFrames } from '../../recording/framesOfRecording.ts';
import type { SetUp } from '../../recording/setUp.ts';
import { clockUsAt } from '../../time/frames.ts';
import type { Curves, RepMeasurement, SetMeasurement, Span } from '../measurement.ts';
import { measureSet } from './measureSet.ts';
import type { SetToMeasure } from './setToMeasure.ts';

/**
 * Measures what a section of the footage shows, as if it were a clip by itself; frames and times are those of the whole footage, like
 * the recording's, the table's and the set-up's.
 */
export function measureSection(set: SetToMeasure, range: FrameRange): SetMeasurement {
  const { table, recording, setUp, edges } = set;
  if (isWhole(range, table) || table.ticks.length === 0) return measureSet(set);
  const startS = clockUsAt(table, range.firstFrame) / 1_000_000;
  const earlier = (seconds: number | undefined) => (seconds === undefined ? undefined : seconds - startS);
  const measured = measureSet({
    ...set,
    table: tableOf(table, range),
    recording: recordingOfFrames(recording, range),
    setUp: setUpOfFrames(setUp, range),
    edges: edges.map(({ startS, stretchedEndS, endS }) => ({
      ...(startS !== undefined && { startS: earlier(startS) ?? 0 }),
      ...(stretchedEndS !== undefined && { stretchedEndS: earlier(stretchedEndS) ?? 0 }),
      ...(endS !== undefined && { endS: earlier(endS) ?? 0 }),
    })),
  });
  const timesS = table.ticks.map((_, frame) => clockUsAt(table, frame) / 1_000_000);
  return inFootage(measured, { startS, firstFrame: range.firstFrame, timesS });
}

function setUpOfFrames(setUp: SetUp, range: FrameRange): SetUp {
  const own = <T extends { readonly frame: number }>(clicks: readonly T[]): T[] =>
    clicks
      .filter(({ frame }) => holds(range, frame))
      .map((click) => ({ ...click, frame: click.frame - range.firstFrame }));
  return {
    ...setUp,
    clicks: own(setUp.clicks),
    depthClicks: own(setUp.depthClicks),
    backClicks: own(setUp.backClicks),
  };
}

type Place = { readonly startS: number; readonly firstFrame: number; readonly timesS: readonly number[] };

function inFootage(measured: SetMeasurement, place: Place): SetMeasurement {
  return {
    ...laterBy(measured, place.startS),
    curves: curvesInFootage(measured.curves, place),
  };
}

/** A measurement whose clock begins earlier by some seconds; its frames stay. */
export function laterBy(measured: SetMeasurement, seconds: number): SetMeasurement {
  const move = (rep: RepMeasurement) => repLater(rep, seconds);
  return {
    ...measured,
    reps: measured.reps.map(move),
    offered: measured.offered.map(move),
    curves: { ...measured.curves, timesS: measured.curves.timesS.map((timeS) => timeS + seconds) },
  };
}

function repLater(rep: RepMeasurement, seconds: number): RepMeasurement {
  const span = (one: Span | null) => one && { startS: one.startS + seconds, endS: one.endS + seconds };
  const { phases, largestDeviation, peakSpeedAtS } = rep;
  return {
    ...rep,
    startS: rep.startS + seconds,
    endS: rep.endS + seconds,
    phases: {
      eccentric: span(phases.eccentric),
      pauseStretched: span(phases.pauseStretched),
      concentric: span(phases.concentric),
      pauseShortened: span(phases.pauseShortened),
    },
    peakSpeedAtS: peakSpeedAtS === null ? null : peakSpeedAtS + seconds,
    largestDeviation: largestDeviation && { ...largestDeviation, atS: largestDeviation.atS + seconds },
  };
}

function curvesInFootage(curves: Curves, { firstFrame, timesS }: Place): Curves {
  const among = <T>(values: readonly (T | null)[]) => timesS.map((_, frame) => values[frame - firstFrame] ?? null);
  return {
    ...curves,
    timesS,
    positionPx: among(curves.positionPx),
    heightM: among(curves.heightM),
    forwardM: among(curves.forwardM),
    speedMps: among(curves.speedMps),
  };
}
