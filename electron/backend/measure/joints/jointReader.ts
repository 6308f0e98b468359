import type { Body, JointRecording, PointPx } from '../../../../engine/recording/recording.ts';
import { type Warning, warning } from '../../../../engine/recording/warnings.ts';
import { boxOf, distanceTo, sizeOf } from './bodies.ts';
import { jointMethod } from './jointMethod.ts';
import { chooseNetworkRoute } from './networkRoute.ts';
import type { Size } from './resample.ts';
import { openWorkerPool } from './workerPool.ts';

/**
 * A look is guided by the body found so many looks earlier, so that as many can run side by side. It is the same for any number
 * of workers, and so is the result.
 */
const looksAside = 4;

/** While the lifter is lost, every so many looks goes over the whole picture; those between are left out. */
const looksBetweenSearches = 6;

/** After so many looks, the person followed is compared with where the bar is. */
const looksBetweenBarChecks = 30;

export type JointReaderOptions = {
  /** Size of the upright picture. */
  readonly picture: Size;
  /** Threads to use, at most `looksAside`. */
  readonly workers: number;
  /** Looks at every so many frames; see `everyFramesFor`. */
  readonly everyFrames?: number;
  /** Where the bar is in a frame, if known: of several people the one at the bar is followed. */
  readonly near?: (frame: number) => PointPx | null;
  /** Is told why, when the joints have to be looked for in the slower way. */
  readonly onSlower?: (reason: unknown) => void;
};

export type JointReader = {
  /**
   * Takes the next frame: planar 4:2:0 bytes (grey plane, then the colour differences), which are copied. Resolves when
   * it may be given another one.
   */
  readonly push: (frame: number, bytes: Uint8Array) => Promise<void>;
  /** Waits for the last looks. */
  readonly finish: () => Promise<{ readonly joints: JointRecording; readonly warnings: readonly Warning[] }>;
  /** Ends the threads; to be called in any case. */
  readonly close: () => Promise<void>;
};

/** After how many frames to look again, for 16-32 looks a second: joints are slow to find, and move slowly enough for that. */
export function everyFramesFor(framesPerSecond: number): number {
  return Math.max(1, Math.ceil(framesPerSecond / 32 - 0.01));
}

/** Starts looking for the lifter's joints. `push` and `finish` throw a problem when the networks can't be used. */
export async function openJointReader({
  picture,
  workers,
  near,
  everyFrames = 1,
  onSlower = ignore,
}: JointReaderOptions): Promise<JointReader> {
  const count = Math.min(looksAside, Math.max(1, Math.floor(workers)));
  const pool = openWorkerPool(count, await chooseNetworkRoute(onSlower));
  const looks: Promise<Body | null>[] = [];
  const lookedAt: number[] = [];
  const underWay = new Set<Promise<void>>();
  let frames = 0;
  let failure: unknown = null;

  const lookAt = async (look: number, frame: number, bytes: Uint8Array<ArrayBuffer>): Promise<Body | null> => {
    const guide = (await looks[Math.max(0, look - looksAside)]) ?? null;
    const last = guide ?? (await newest(looks, look));
    if (last === null && look % looksBetweenSearches !== 0) return null;
    const bar = near?.(frame) ?? null;
    const anew = last !== null && bar !== null && look % looksBetweenBarChecks === 0 && isAwayFrom(last, bar);
    return pool.look({ bytes, size: picture, last, near: bar, anew });
  };

  return {
    push: async (frame, bytes) => {
      frames = frame + 1;
      if (failure !== null) throw failure;
      if (frame % everyFrames !== 0) return;
      const found = lookAt(looks.length, frame, bytes.slice());
      looks.push(found);
      lookedAt.push(frame);
      const settled: Promise<void> = found
        .then(ignore, (error: unknown) => {
          failure ??= error;
        })
        .then(() => {
          underWay.delete(settled);
        });
      underWay.add(settled);
      while (underWay.size > count) await Promise.race(underWay);
    },
    finish: async () => {
      const bodies = await Promise.all(looks);
      const at = new Map(lookedAt.map((frame, look) => [frame, bodies[look] ?? null]));
      const joints: JointRecording = {
        method: jointMethod,
        everyFrames,
        frames: Array.from({ length: frames }, (_, frame) => at.get(frame) ?? null),
      };
      return { joints, warnings: warningsOf(bodies) };
    },
    close: pool.close,
  };
}

const ignore = () => undefined;

/** The body found last, within the looks that the guide came too early for. */
async function newest(looks: readonly Promise<Body | null>[], look: number): Promise<Body | null> {
  for (let earlier = look - 1; earlier > look - looksAside && earlier >= 0; earlier -= 1) {
    const body = await looks[earlier];
    if (body) return body;
  }
  return null;
}

function isAwayFrom(body: Body, bar: PointPx): boolean {
  const box = boxOf(body);
  return box === null || distanceTo(box, bar) > 0.5 * sizeOf(box);
}

function warningsOf(bodies: readonly (Body | null)[]): readonly Warning[] {
  if (bodies.length === 0) return [];
  const seen = bodies.filter((body) => body !== null).length / bodies.length;
  if (seen === 0) return [warning('nobodySeen', {})];
  return seen >= 0.7 ? [] : [warning('seldomSeen', { percent: Math.round(100 * seen) })];
}
