import { readFileSync } from 'node:fs';
import path from 'node:path';
import { gunzipSync } from 'node:zlib';
import type { Facing } from '../../../../engine/motion/joints/angles.ts';
import type { BodyInput } from '../../../../engine/motion/joints/bodyTrack.ts';
import { readView } from '../../../../engine/motion/view/readView.ts';
import type { Body } from '../../../../engine/recording/recording.ts';

type Pair = readonly [number, number];

/** A recording with the truth of its clip. */
export type KnownLifter = {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly nearSide: Facing;
  readonly heightM: number;
  /** In the plane of the near disc. */
  readonly metresPerPixel: number;
  readonly discRadiusPx: number;
  readonly timesS: readonly number[];
  readonly disc: readonly Pair[];
  readonly hipZ: readonly number[];
  readonly everyFrames: number;
  readonly joints: readonly (readonly number[] | null)[];
  readonly reps: readonly {
    readonly startS: number;
    readonly endS: number;
    readonly farFrame: number;
    readonly kneeDeg: number;
    readonly hipDeg: number;
    readonly trunkLeanDeg: number;
    readonly shankLeanDeg: number;
    readonly trunkLeanMaxDeg: number;
    readonly neckDeg: number;
    readonly depthM: number;
    readonly depthAtFarM: number;
    readonly hipCreasePx: Pair;
    readonly kneeTopPx: Pair;
  }[];
};

export const lifterNames = [
  'squat-side',
  'squat-variable-rate',
  'split-squat-turned',
  'hinge-side',
  'hinge-hevc',
] as const;

export function knownLifter(name: (typeof lifterNames)[number]): KnownLifter {
  return JSON.parse(
    gunzipSync(readFileSync(path.join(import.meta.dirname, 'recordings', `${name}.json.gz`))).toString(),
  );
}

/** What the network said, as a recording holds it. */
export function bodiesOf({ joints }: KnownLifter): readonly (Body | null)[] {
  return joints.map((numbers) =>
    numbers === null
      ? null
      : Array.from({ length: 17 }, (_, i) => ({
          xPx: (numbers[3 * i] ?? 0) / 10,
          yPx: (numbers[3 * i + 1] ?? 0) / 10,
          confidence: (numbers[3 * i + 2] ?? 0) / 100,
        })),
  );
}

/** As a clip is measured: facing the way that the joints show. */
export function inputOf(lifter: KnownLifter): BodyInput {
  const joints = { frames: bodiesOf(lifter) };
  const facing = readView(joints)?.facing;
  if (facing == null) throw new Error(`nothing shows which way the lifter of ${lifter.name} faces`);
  return {
    joints,
    timesS: lifter.timesS,
    facing,
    disc: { frames: lifter.disc.map(([xPx, yPx]) => ({ xPx, yPx })), radiusPx: lifter.discRadiusPx },
    camera: null,
    picture: { width: lifter.width, height: lifter.height },
    rollDeg: 0,
  };
}
