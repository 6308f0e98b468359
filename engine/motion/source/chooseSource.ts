import type { Exercise } from '../../exercises/exercise.ts';
import type { Recording } from '../../recording/recording.ts';
import type { SetUp } from '../../recording/setUp.ts';
import { bodyHeightPx } from '../joints/lifter.ts';
import type { FollowReason } from '../measurement.ts';
import { type BodyCandidate, bodyCandidates, doubtShareOf } from './bodyCandidate.ts';
import { checkDisc, type DiscVerdict, movesAlike } from './discCheck.ts';
import { isOfLikelySize } from './discSize.ts';
import { gestureCheck } from './gesture.ts';
import { partsOf } from './parts.ts';
import { type SteadyCamera, type SteadyCameras, steadyCameras } from './steadyCameras.ts';
import type { Tracked } from './tracked.ts';

/** A part of the body that is seen in fewer of the looks gives way to the next. */
const leastCoverage = 0.6;

/** A part that comes later in an exercise's order is taken when it moves as the first does and is so many times surer. */
const timesSurer = 3;

export type ToFollow = {
  readonly recording: Recording;
  readonly exercise: Exercise;
  readonly setUp: SetUp;
  readonly mediaTimesS: readonly number[];
  readonly shown: { readonly width: number; readonly height: number };
};

/**
 * What is followed. What the coach clicked or chose goes before all, since it was chosen because it shows the load. Then a
 * disc, where the exercise has one and it moves with the lifter; then the part of the body that is nearest to the load and is
 * seen. Null when there is nothing.
 */
export function followedIn(asked: ToFollow): Tracked | null {
  const { recording, exercise, setUp } = asked;
  const cameras = steadyCameras(recording, { timesS: asked.mediaTimesS, discDiameterM: setUp.discDiameterM });
  const { disc, point } = recording;
  const byDisc = (because: FollowReason): Tracked | null =>
    disc && {
      ...{ follows: 'disc', because, sightings: disc.frames, givesRange: true, doubtShare: 0, isGesture: null },
      ...onTrack(cameras.disc),
    };
  const bodies = candidatesOf(asked, cameras.body);
  const byBody = (body: BodyCandidate, because: FollowReason): Tracked => ({
    ...bodyTracked(body, because, cameras.body),
    isGesture: gestureIn(asked, body, bodies),
  });
  if (setUp.follow !== 'auto') {
    if (setUp.follow === 'disc') return byDisc('chosen');
    const chosen = bodies.made(setUp.follow);
    return chosen && byBody(chosen, 'chosen');
  }
  if (point) {
    const onPoint = {
      sightings: point.frames,
      givesRange: true,
      doubtShare: 0,
      isGesture: null,
      ...onTrack(cameras.body),
    };
    return { follows: 'point', because: 'clicked', ...onPoint };
  }
  if (disc && setUp.clicks.some(({ what }) => what === 'disc')) return byDisc('clicked');
  const body = bodies.best(partsOf(exercise));
  if (!body) return byDisc('discUnchecked');
  const reason = disc ? discReason(asked, bodies, cameras) : hasDisc(exercise) ? 'noDisc' : 'noDiscExpected';
  return isForDisc(reason) ? byDisc(reason) : byBody(body, reason);
}

const isForDisc = (reason: FollowReason): boolean => reason === 'discMovesWithLifter' || reason === 'discUnchecked';

const onTrack = ({ path, wanderPx }: SteadyCamera): Pick<Tracked, 'camera' | 'wanderPx'> => ({
  camera: path,
  wanderPx,
});

const bodyTracked = (body: BodyCandidate, because: FollowReason, camera: SteadyCamera): Omit<Tracked, 'isGesture'> => ({
  follows: body.part,
  because,
  sightings: body.sightings,
  ...onTrack(camera),
  givesRange: body.givesRange,
  doubtShare: doubtShareOf(body),
});

function gestureIn({ recording, exercise, shown }: ToFollow, body: BodyCandidate, bodies: Candidates) {
  if (body.part !== 'hands') return null;
  const heightPx = (recording.joints && bodyHeightPx(recording.joints)) ?? shown.height / 2;
  return gestureCheck(body, bodies.made('shoulders'), { pattern: exercise.pattern, heightPx });
}

const hasDisc = ({ trackedPoint }: Exercise): boolean => trackedPoint === 'disc' || trackedPoint === 'bar-end';

type Candidates = {
  readonly made: (part: BodyCandidate['part']) => BodyCandidate | null;
  readonly best: (parts: readonly BodyCandidate['part'][]) => BodyCandidate | null;
};

function candidatesOf({ recording, mediaTimesS, shown }: ToFollow, { path: camera }: SteadyCamera): Candidates {
  const { joints } = recording;
  const make = joints
    ? bodyCandidates({ bodies: joints, timesS: mediaTimesS, camera, pictureHeightPx: shown.height })
    : () => null;
  const kept = new Map<BodyCandidate['part'], BodyCandidate | null>();
  const made = (part: BodyCandidate['part']) => {
    const known = kept.get(part);
    if (known !== undefined) return known;
    const fresh = make(part);
    kept.set(part, fresh);
    return fresh;
  };
  const best = (parts: readonly BodyCandidate['part'][]) => {
    const all = parts.flatMap((part) => made(part) ?? []);
    const seen = all.filter(({ coverage }) => coverage >= leastCoverage);
    const [first, ...others] = seen.length > 0 ? seen : all;
    if (first === undefined) return null;
    return others.reduce(
      (chosen, other) =>
        doubtShareOf(other) < doubtShareOf(chosen) / timesSurer && movesAlike(first, other, mediaTimesS)
          ? other
          : chosen,
      first,
    );
  };
  return { made, best };
}

/** Why a disc is followed or not: it counts when it moves with any part of the body that shows the load. */
function discReason(
  { recording, exercise, setUp, mediaTimesS, shown }: ToFollow,
  bodies: Candidates,
  cameras: SteadyCameras,
): FollowReason {
  const { disc, joints } = recording;
  if (!disc || !joints) return 'noDisc';
  const heightPx = bodyHeightPx(joints) ?? shown.height / 2;
  const verdicts = partsOf(exercise).flatMap((part) => {
    const body = bodies.made(part);
    return body
      ? [checkDisc({ frames: disc.frames, camera: cameras.disc.path }, body, { timesS: mediaTimesS, heightPx })]
      : [];
  });
  const movesWith = verdicts.some(({ kind }) => kind === 'movesWith');
  if (!hasDisc(exercise)) {
    if (exercise.implement.startsWith('body weight')) return 'noDiscExpected';
    if (!isOfLikelySize(disc, joints, setUp)) return 'discOfUnlikelySize';
    return movesWith ? 'discMovesWithLifter' : 'noDiscExpected';
  }
  if (movesWith) return isOfLikelySize(disc, joints, setUp) ? 'discMovesWithLifter' : 'discOfUnlikelySize';
  const against = verdicts.find(({ kind }) => kind !== 'unknown');
  return against ? reasonOf(against) : 'discUnchecked';
}

function reasonOf({ kind }: DiscVerdict): FollowReason {
  switch (kind) {
    case 'movesWith':
      return 'discMovesWithLifter';
    case 'standsStill':
      return 'discStandsStill';
    case 'movesOtherwise':
      return 'discMovesOtherwise';
    case 'seldomSeen':
      return 'discSeldomSeen';
    case 'otherBody':
    case 'unknown':
      return 'discUnchecked';
  }
}
