import type { Exercise, View } from '../../exercises/exercise.ts';
import type { Recording } from '../../recording/recording.ts';
import type { SetUp } from '../../recording/setUp.ts';
import { type Warning, warning } from '../../recording/warnings.ts';
import { type BodyTrack, trackBody } from '../joints/bodyTrack.ts';
import { hipPlane } from '../joints/depth.ts';
import { measureRepJoints } from '../joints/measureRepJoints.ts';
import { type PostureReader, postureReader } from '../joints/posture.ts';
import type { RepJoints, RepMeasurement, Span, ViewRead } from '../measurement.ts';
import { believableHeightM } from '../source/discSize.ts';
import { steadyCameras } from '../source/steadyCameras.ts';
import type { Scale } from './calibrate.ts';

/**
 * The lifter's body through a clip, and the reader of its posture: from the side alone, since angles in the picture are other
 * angles from elsewhere.
 */
export type BodyOfSet = { readonly track: BodyTrack; readonly posture: PostureReader; readonly isFromSide: boolean };

/** Patterns in which the hip goes down to knee height; elsewhere the hip's depth means nothing. */
const depthPatterns: readonly string[] = ['squat', 'lunge'];
/** How long before the first rep the set-up is looked at. */
const setUpBeforeS = 0.25;

/** The body that the joints show; null when there are none, or nothing shows which way it faces. */
export function bodyOfSet(
  {
    recording,
    setUp,
    shown,
    mediaTimesS,
    view,
    read,
  }: {
    readonly recording: Recording;
    readonly setUp: SetUp;
    readonly shown: { readonly width: number; readonly height: number };
    readonly mediaTimesS: readonly number[];
    /** As the coach chose it; null = as the joints show it. */
    readonly view: View | null;
    /** Where the camera stands, as the joints show it. */
    readonly read: ViewRead | null;
  },
  leanDeg: number | null,
): BodyOfSet | null {
  const { joints, disc } = recording;
  const facing = setUp.facing ?? read?.facing ?? null;
  if (!joints || facing === null) return null;
  const track = trackBody({
    joints,
    timesS: mediaTimesS,
    facing,
    disc: disc && { frames: disc.frames, radiusPx: disc.outline.radiusPx },
    camera: steadyCameras(recording, { timesS: mediaTimesS, discDiameterM: setUp.discDiameterM }).body.path,
    picture: shown,
    rollDeg: leanDeg ?? 0,
  });
  const seenFrom = view ?? read?.view ?? null;
  return track && { track, posture: postureReader(track), isFromSide: seenFrom === null || seenFrom === 'side' };
}

/** What the joints say of a rep, with a depth only where it means something. `rep` is in media seconds. */
export function jointsOfRep(
  { track, posture, isFromSide }: BodyOfSet,
  rep: Pick<RepMeasurement, 'startS' | 'endS' | 'phases'>,
  {
    exercise,
    setUp,
    scale,
    firstStartS,
  }: { readonly exercise: Exercise; readonly setUp: SetUp; readonly scale: Scale | null; readonly firstStartS: number },
): RepJoints {
  const frameAt = (atS: number) => nearestIndex(track.timesS, atS);
  const span: Span = { startS: rep.startS, endS: rep.endS };
  const within = (frame: number) =>
    (track.timesS[frame] ?? -1) >= span.startS && (track.timesS[frame] ?? -1) <= span.endS;
  const firstBack = [...setUp.backClicks].sort((one, other) => one.frame - other.frame)[0];
  const ownBack = setUp.backClicks.find((click) => click !== firstBack && within(click.frame));
  const measured = measureRepJoints(track, posture, {
    span,
    stretchedEndFrame: frameAt(stretchedEndOf(rep)),
    setUpFrame: frameAt(Math.max(0, firstStartS - setUpBeforeS)),
    scale: scale && {
      metresPerPixel: scale.calibration.metresPerPixel,
      relativeUncertainty: scale.calibration.relativeUncertainty,
    },
    depthClick: setUp.depthClicks.find(({ frame }) => within(frame)) ?? null,
    backClicks: firstBack && ownBack ? { setUp: firstBack.points, rep: ownBack.points } : null,
  });
  if (!isFromSide) return byClicksAlone(measured);
  if (depthPatterns.includes(exercise.pattern) || measured.depthFrom === 'clicks') return measured;
  return { ...measured, ...noDepth };
}

/** What is left of a rep's joints where the camera doesn't stand at the side: what a person clicked. */
function byClicksAlone({ depthM, depthOutcome, depthFrom, backChangeDeg }: RepJoints): RepJoints {
  const none = { kneeDeg: null, hipDeg: null, trunkLeanDeg: null, shankLeanDeg: null, trunkLeanMaxDeg: null };
  const depth = depthFrom === 'clicks' ? { depthM, depthOutcome, depthFrom } : noDepth;
  return { ...none, headTrunkDeg: null, ...depth, backChangeDeg, unseen: [] };
}

const noDepth = { depthM: null, depthOutcome: null, depthFrom: null } as const;

/** The middle of the pause at the stretched end; in a rep that begins with the concentric, its start. */
function stretchedEndOf({ phases, startS, endS }: Pick<RepMeasurement, 'startS' | 'endS' | 'phases'>): number {
  const { eccentric, concentric } = phases;
  if (!eccentric || !concentric) return (startS + endS) / 2;
  return eccentric.endS <= concentric.startS ? (eccentric.endS + concentric.startS) / 2 : concentric.startS;
}

function nearestIndex(timesS: readonly number[], atS: number): number {
  let nearest = 0;
  timesS.forEach((timeS, index) => {
    if (Math.abs(timeS - atS) < Math.abs((timesS[nearest] ?? 0) - atS)) nearest = index;
  });
  return nearest;
}

/** A warning when the disc, taken for full-size, would make a giant or a child of the lifter; else null. */
export function sizeDoubt(heightPx: number, scale: Scale): Warning | null {
  const heightM = heightPx * scale.calibration.metresPerPixel * hipPlane.factor;
  if (heightM >= believableHeightM.least && heightM <= believableHeightM.most) return null;
  return warning('unlikelyHeight', { metres: Math.round(heightM * 10) / 10 });
}
