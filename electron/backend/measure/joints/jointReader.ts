import { boxOf } from '../../../../engine/motion/joints/bodyBox.ts';
import type { Body, JointRecording, PointPx } from '../../../../engine/recording/recording.ts';
import { type Warning, warning } from '../../../../engine/recording/warnings.ts';
import type { Courtesy } from '../giveWay.ts';
import { wayUpOf } from './bodies.ts';
import { jointMethod } from './jointMethod.ts';
import type { LifterClick } from './lifterPlaces.ts';
import { motionMap } from './motionMap.ts';
import { chooseNetworkRoute } from './networkRoute.ts';
import { depthOfSearch, type Pace, paceOf } from './pace.ts';
import type { Guide, Look, Seen } from './perceive.ts';
import type { Round } from './personTracks.ts';
import type { Size } from './resample.ts';
import {
  afterFollowing,
  afterTrying,
  type DoneLook,
  type FirstPass,
  isLyingLifter,
  type NextStage,
  revisit,
  type Stage,
} from './secondPass.ts';
import { openWorkerPool } from './workerPool.ts';

/** Somebody who was not seen for longer is searched for, wherever they were. */
const guidesForS = 1;
/** While somebody was seen so recently, the picture is searched at once when they are not where they were. */
const searchAtOnceForS = 0.3;

export type JointReaderOptions = {
  /** Size of the upright picture. */
  readonly picture: Size;
  /** Threads to use; more than looks run side by side are of no use. */
  readonly workers: number;
  /** Whom the threads give way to. */
  readonly courtesy?: Courtesy;
  /** Frames in a second of lifting, on average. */
  readonly framesPerSecond: number;
  /** Looks at every so many frames; see `everyFramesFor`. */
  readonly everyFrames?: number;
  /** Where the bar is in a frame, if known: of several people the one at the bar is followed. */
  readonly near?: (frame: number) => PointPx | null;
  /** Where a person clicked the lifter. */
  readonly clicks?: readonly { readonly frame: number; readonly at: PointPx }[];
  /** Is told why, when the joints have to be looked for in the slower way. */
  readonly onSlower?: (reason: unknown) => void;
};

export type JointReader = {
  /**
   * Takes the next frame: planar 4:2:0 bytes (grey plane, then the colour differences), which are copied. Resolves when
   * it may be given another one.
   */
  readonly push: (frame: number, bytes: Uint8Array) => Promise<void>;
  /**
   * After the last frame: those to be given once more, rising, because the whole clip tells that the lifter is somebody
   * else than was followed there. To be asked again after these, until there are none; often there are none at once.
   */
  readonly framesToSeeAgain: () => Promise<readonly number[]>;
  /** Waits for the last looks. */
  readonly finish: () => Promise<{ readonly joints: JointRecording; readonly warnings: readonly Warning[] }>;
  /** Ends the threads; to be called in any case. */
  readonly close: () => Promise<void>;
};

/** After how many frames to look again, for 16-32 looks a second: joints are slow to find, and move slowly enough for that. */
export function everyFramesFor(framesPerSecond: number): number {
  return Math.max(1, Math.ceil(framesPerSecond / 32 - 0.01));
}

/** A look under way or done, and where the bar was then. */
type Looked = { readonly frame: number; readonly bar: PointPx | null; readonly seen: Promise<Seen> };

/** Starts looking for the lifter's joints. `push` and `finish` throw a problem when the networks can't be used. */
export async function openJointReader({
  picture,
  workers,
  courtesy = 'nobody',
  near,
  framesPerSecond,
  everyFrames = 1,
  clicks = [],
  onSlower = ignore,
}: JointReaderOptions): Promise<JointReader> {
  const pace = paceOf(framesPerSecond / everyFrames);
  const count = Math.min(pace.looksAside, Math.max(1, Math.floor(workers)));
  const pool = openWorkerPool(count, { route: await chooseNetworkRoute(onSlower), courtesy });
  const secondsOf = (frame: number) => frame / framesPerSecond;
  const lifterClicks = clicks.map(({ frame, at }): LifterClick => {
    const looked = frame - (frame % everyFrames);
    return { frame: looked, atS: secondsOf(looked), at };
  });
  const looks: Looked[] = [];
  const again = new Map<number, Promise<Seen>>();
  const underWay = new Set<Promise<void>>();
  const motion = motionMap(picture);
  let stage: Stage = { kind: 'following' };
  let firstPass: FirstPass | null = null;
  let frames = 0;
  let failure: unknown = null;

  /** The first time through: guided by who was seen a moment ago. */
  const follow = async (look: number, frame: number, order: Pick<Look, 'bytes' | 'near'>): Promise<Seen> => {
    const guide = await guideFor(looks, look, { pace, secondsBetween: (from) => secondsOf(frame - from) });
    const clicked = lifterClicks.find((click) => click.frame === frame)?.at ?? null;
    const isRound = look % pace.looksBetweenRounds === 0 || clicked !== null;
    const isSearch = look % pace.looksBetweenSearches === 0;
    if (guide === null && !isSearch && !isRound) return nobody;
    const searches = isSearch || (guide !== null && guide.passedS <= searchAtOnceForS);
    const search = searches ? depthOfSearch(isSearch ? look / pace.looksBetweenSearches : 1) : null;
    return pool.look({
      ...order,
      size: picture,
      guide,
      search,
      clicked,
      who: isRound ? 'everybody' : 'lifter',
      crops: null,
    });
  };

  /** Once more: at the place that the whole clip tells, or through the crops round the bar. */
  const seeAgain = async (frame: number, order: Pick<Look, 'bytes' | 'near'>): Promise<Seen> => {
    const look = { ...order, size: picture, guide: null, search: null, clicked: null, who: 'lifter' } as const;
    if (stage.kind === 'trying' || stage.kind === 'lying') {
      const { crops } = stage;
      const seen = await pool.look({ ...look, crops: { crops, until: stage.kind === 'trying' ? 'all' : 'clear' } });
      if (stage.kind === 'trying') stage.tried.set(frame, seen.lying);
      return seen;
    }
    const place = stage.kind === 'revisiting' ? stage.places.at(secondsOf(frame)) : null;
    if (place === null) return nobody;
    const { body, box } = place;
    const guide: Guide = { body, box, passedS: Math.min(guidesForS, place.passedS), wayUp: wayUpOf(body) };
    return pool.look({ ...look, guide, crops: null });
  };

  const start = (seen: Promise<Seen>): void => {
    const settled: Promise<void> = seen
      .then(ignore, (error: unknown) => {
        failure ??= error;
      })
      .then(() => {
        underWay.delete(settled);
      });
    underWay.add(settled);
  };

  const doneLooks = async (): Promise<readonly DoneLook[]> =>
    Promise.all(
      looks.map(async ({ frame, seen }) => {
        const { lifter } = await (again.get(frame) ?? seen);
        return { frame, atS: secondsOf(frame), body: lifter };
      }),
    );

  const seenOnce = async (): Promise<FirstPass> => {
    const bars = new Map(looks.map(({ frame, bar }) => [frame, bar]));
    const seen = await Promise.all(looks.map((look) => look.seen));
    const rounds = looks.flatMap(({ frame }, look): Round[] => {
      const { people, lifter } = seen[look] ?? nobody;
      const isBesideGap = seen[look - 1]?.lifter === null || seen[look + 1]?.lifter === null;
      const all = people.length === 0 && lifter !== null && isBesideGap ? [lifter] : people;
      return all.length === 0 ? [] : [{ frame, atS: secondsOf(frame), people: all, followed: lifter }];
    });
    return {
      looks: await doneLooks(),
      rounds,
      clicks: lifterClicks,
      evidence: {
        picture,
        rounds: Math.ceil(looks.length / pace.looksBetweenRounds),
        bar: (frame) => bars.get(frame) ?? null,
      },
      motion: motion.middle(),
    };
  };

  const nextStage = async (): Promise<NextStage> => {
    firstPass ??= await seenOnce();
    switch (stage.kind) {
      case 'following':
        return afterFollowing(firstPass);
      case 'trying':
        return afterTrying(firstPass, stage);
      case 'lying': {
        if (isLyingLifter(await doneLooks(), firstPass)) return { stage, frames: [] };
        again.clear();
        return revisit(firstPass, stage.places);
      }
      case 'revisiting':
        return { stage, frames: [] };
    }
  };

  return {
    push: async (frame, bytes) => {
      if (failure !== null) throw failure;
      if (stage.kind === 'following') {
        frames = frame + 1;
        if (frame % everyFrames !== 0) return;
      }
      const order = { bytes: bytes.slice(), near: near?.(frame) ?? null };
      if (stage.kind !== 'following') {
        const seen = seeAgain(frame, order);
        if (stage.kind !== 'trying') again.set(frame, seen);
        start(seen);
      } else {
        motion.add(order);
        const seen = follow(looks.length, frame, order);
        looks.push({ frame, bar: order.near, seen });
        start(seen);
      }
      while (underWay.size > count) await Promise.race(underWay);
    },
    framesToSeeAgain: async () => {
      await Promise.all(underWay);
      if (failure !== null) throw failure;
      const next = await nextStage();
      stage = next.stage;
      return next.frames;
    },
    finish: async () => {
      const found = (await doneLooks()).map(({ body }) => body);
      const at = new Map(looks.map(({ frame }, look) => [frame, found[look] ?? null]));
      const joints: JointRecording = {
        method: jointMethod,
        everyFrames,
        frames: Array.from({ length: frames }, (_, frame) => at.get(frame) ?? null),
      };
      const inVain = (stage.kind === 'following' ? [] : stage.places.inVain).map(({ frame }) =>
        warning('nobodyAtClick', { frame }),
      );
      return { joints, warnings: [...inVain, ...warningsOf(found)] };
    },
    close: pool.close,
  };
}

const ignore = () => undefined;
const nobody: Seen = { lifter: null, people: [], lying: [] };

/**
 * Who was seen latest, at least so many looks ago as run side by side; at the beginning, and after a gap, any look since.
 */
async function guideFor(
  looks: readonly Looked[],
  look: number,
  { pace, secondsBetween }: { readonly pace: Pace; readonly secondsBetween: (fromFrame: number) => number },
): Promise<Guide | null> {
  const lastUsable = Math.max(0, look - pace.looksAside);
  for (const order of [descending(lastUsable, 0), descending(look - 1, lastUsable + 1)]) {
    for (const earlier of order) {
      const looked = looks[earlier];
      if (looked === undefined || earlier >= look) continue;
      const passedS = secondsBetween(looked.frame);
      if (passedS > guidesForS) break;
      const { lifter } = await looked.seen;
      const box = lifter && boxOf(lifter);
      if (lifter && box) return { body: lifter, box, passedS, wayUp: wayUpOf(lifter) };
    }
  }
  return null;
}

const descending = (from: number, to: number): readonly number[] =>
  Array.from({ length: Math.max(0, from - to + 1) }, (_, i) => from - i);

function warningsOf(bodies: readonly (Body | null)[]): readonly Warning[] {
  if (bodies.length === 0) return [];
  const seen = bodies.filter((body) => body !== null).length / bodies.length;
  if (seen === 0) return [warning('nobodySeen', {})];
  return seen >= 0.7 ? [] : [warning('seldomSeen', { percent: Math.round(100 * seen) })];
}
