import { readFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Measured, RepMeasurement } from '../../../../engine/motion/measurement.ts';
import { findClip } from '../media/clips.ts';
import { type MeasuredClip, measureClip } from './measuredClip.ts';

// Source of every expectation: the truth files written when the clips were made (tests/footage).

type TrueRep = {
  readonly durations_s: Readonly<Record<'eccentric' | 'bottom_pause' | 'concentric' | 'top_pause', number>>;
  readonly rom_m: number;
  readonly concentric_peak_velocity_mps: number;
  readonly concentric_mean_velocity_mps: number;
  readonly concentric_time_of_peak_s: number;
  readonly bar_x_range_m: readonly [number, number];
  readonly commanded_drift_m: number;
};
type Truth = {
  readonly image_forward: '+x' | '-x';
  readonly reps: readonly TrueRep[];
  readonly disc_centre_px: readonly (readonly [number, number])[];
  readonly disc_first_ellipse: { readonly semi: readonly [number, number] };
};

const clips = [
  { name: 'squat-side', exercise: 'back-squat', square: true },
  { name: 'hinge-side', exercise: 'romanian-deadlift', square: true },
  { name: 'split-squat-turned', exercise: 'split-squat', square: false },
  { name: 'press-portrait', exercise: 'overhead-press', square: true },
  { name: 'squat-variable-rate', exercise: 'back-squat', square: true },
  { name: 'squat-low-light', exercise: 'back-squat', square: true },
  { name: 'hinge-hevc', exercise: 'romanian-deadlift', square: false },
] as const;

const truthOf = (name: string): Truth =>
  JSON.parse(readFileSync(path.resolve(import.meta.dirname, '../../../footage', `${name}.truth.json`), 'utf8'));

const measured = new Map<string, MeasuredClip>();
const clipOf = (name: string): MeasuredClip => {
  const clip = measured.get(name);
  if (!clip) throw new Error(`${name} was not measured`);
  return clip;
};

beforeAll(async () => {
  for (const { name, exercise } of clips) {
    const facing = truthOf(name).image_forward === '+x' ? 'right' : 'left';
    measured.set(name, await measureClip(findClip(name), { exercise, facing }));
  }
}, 120_000);

type Pair = { readonly rep: RepMeasurement; readonly truth: TrueRep; readonly clip: string; readonly last: boolean };
const pairs = (): Pair[] =>
  clips.flatMap(({ name }) => {
    const { reps } = clipOf(name).measurement;
    return truthOf(name).reps.flatMap((truth, index) => {
      const rep = reps[index];
      return rep ? [{ rep, truth, clip: name, last: index === reps.length - 1 }] : [];
    });
  });

const quantile = (numbers: readonly number[], share: number): number =>
  [...numbers].sort((one, other) => one - other)[Math.min(numbers.length - 1, Math.floor(share * numbers.length))] ?? 0;
const off = (value: Measured | null, truth: number): number => Math.abs((value?.value ?? Number.NaN) - truth);

/** Pauses that the clip shows both ends of: a last pause shortened has none. */
const pauses = ({ rep, truth, clip, last }: Pair): { readonly told: Measured | null; readonly truth: number }[] => {
  const concentricFirst = clip === 'press-portrait';
  const long = { told: rep.durationsS.pauseStretched, truth: truth.durations_s.bottom_pause };
  const short = { told: rep.durationsS.pauseShortened, truth: truth.durations_s.top_pause };
  if (!last) return [long, short];
  return [concentricFirst ? short : long];
};

describe.each(clips)('$name', ({ name, square }) => {
  it('has its reps, and not one more', () => {
    expect(clipOf(name).measurement.reps).toHaveLength(truthOf(name).reps.length);
  });

  it('follows the disc through every frame', () => {
    const { disc } = clipOf(name);
    const squares = truthOf(name).disc_centre_px.map(([x, y], frame) => {
      const place = disc?.frames[frame];
      return place ? (place.xPx - x) ** 2 + (place.yPx - y) ** 2 : Number.POSITIVE_INFINITY;
    });
    const rmsPx = Math.sqrt(squares.reduce((sum, square) => sum + square, 0) / squares.length);
    expect(rmsPx).toBeLessThanOrEqual(square ? 0.3 : 0.7);
  });

  it('finds the size of the disc', () => {
    const [radiusPx] = truthOf(name).disc_first_ellipse.semi;
    const { outline } = clipOf(name).disc ?? {};
    expect(Math.abs((outline?.radiusPx ?? 0) / radiusPx - 1)).toBeLessThan(0.015);
  });

  it('tells the range of motion', () => {
    for (const { rep, truth } of pairs().filter(({ clip }) => clip === name)) {
      expect(off(rep.romM, truth.rom_m) / truth.rom_m).toBeLessThanOrEqual(square ? 0.015 : 0.03);
    }
  });

  it('tells mean and peak speed, and when it peaks', () => {
    for (const { rep, truth } of pairs().filter(({ clip }) => clip === name)) {
      const { concentric_mean_velocity_mps: mean, concentric_peak_velocity_mps: peak } = truth;
      expect(off(rep.meanConcentricMps, mean) / mean).toBeLessThanOrEqual(0.03);
      expect(off(rep.peakConcentricMps, peak) / peak).toBeLessThanOrEqual(0.03);
    }
  });
});

it('times eccentric and concentric phases: median within 0.03 s, 95 of 100 within 0.10 s', () => {
  const errors = pairs().flatMap(({ rep, truth }) => [
    off(rep.durationsS.eccentric, truth.durations_s.eccentric),
    off(rep.durationsS.concentric, truth.durations_s.concentric),
  ]);
  expect(quantile(errors, 0.5)).toBeLessThanOrEqual(0.03);
  expect(quantile(errors, 0.95)).toBeLessThanOrEqual(0.1);
});

it('times pauses likewise, and reads a missing one as less than 0.1 s', () => {
  const all = pairs().flatMap(pauses);
  const errors = all.map(({ told, truth }) => off(told, truth));
  expect(quantile(errors, 0.5)).toBeLessThanOrEqual(0.03);
  expect(quantile(errors, 0.95)).toBeLessThanOrEqual(0.1);
  const missing = all.filter(({ truth }) => truth < 0.01);
  expect(missing.length).toBeGreaterThan(0);
  for (const { told } of missing) expect(told?.value).toBeLessThan(0.1);
});

it('tells drift from the upright to 8 mm', () => {
  for (const { rep, truth } of pairs().filter(({ clip }) => clip !== 'press-portrait')) {
    expect(off(rep.driftForwardM, Math.max(0, truth.bar_x_range_m[1]))).toBeLessThanOrEqual(0.008);
    expect(off(rep.driftBackM, Math.max(0, -truth.bar_x_range_m[0]))).toBeLessThanOrEqual(0.008);
  }
});

it('tells what a press strays from the set’s own curve to 8 mm', () => {
  for (const { rep, truth } of pairs().filter(({ clip }) => clip === 'press-portrait')) {
    expect(off(rep.driftForwardM, Math.max(0, truth.commanded_drift_m))).toBeLessThanOrEqual(0.008);
    expect(off(rep.driftBackM, Math.max(0, -truth.commanded_drift_m))).toBeLessThanOrEqual(0.008);
  }
});

it('covers the truth with its uncertainty in at least 90 of 100 measures', () => {
  const covered = pairs().flatMap((pair) => {
    const { rep, truth, clip } = pair;
    const upright = clip !== 'press-portrait';
    const told: (readonly [Measured | null, number])[] = [
      [rep.durationsS.eccentric, truth.durations_s.eccentric],
      [rep.durationsS.concentric, truth.durations_s.concentric],
      ...pauses(pair).map((pause) => [pause.told, pause.truth] as const),
      [rep.romM, truth.rom_m],
      [rep.meanConcentricMps, truth.concentric_mean_velocity_mps],
      [rep.peakConcentricMps, truth.concentric_peak_velocity_mps],
      [rep.driftForwardM, upright ? Math.max(0, truth.bar_x_range_m[1]) : Math.max(0, truth.commanded_drift_m)],
      [rep.driftBackM, upright ? Math.max(0, -truth.bar_x_range_m[0]) : Math.max(0, -truth.commanded_drift_m)],
    ];
    return told.map(([value, known]) => off(value, known) <= (value?.plusMinus ?? -1));
  });
  expect(covered.length).toBeGreaterThan(100);
  expect(covered.filter(Boolean).length / covered.length).toBeGreaterThanOrEqual(0.9);
});
