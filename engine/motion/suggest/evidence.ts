import type { View } from '../../exercises/exercise.ts';
import type { RepMeasurement, SetMeasurement } from '../measurement.ts';

/** A movement less sure to be a rep proposes nothing. */
const leastSureness = 0.7;

/**
 * The reps whose measures may propose something, in order, each with those measures alone that what was followed and the view can
 * bear out:
 * - an unsure rep proposes nothing;
 * - parts of the body go their own small ways while the load goes straight, so a path and its turns are the load's alone;
 * - metres from a body's size are too rough for a limit in metres;
 * - hip and knee compare in height from the side alone, as elsewhere the nearer one looks lower; what a person clicked stays.
 */
export function evidenceOf({ reps, follows, calibration }: SetMeasurement, view: View | null): RepMeasurement[] {
  const isLoad = follows === 'disc' || follows === 'point';
  const isSide = view === null || view === 'side';
  return [...reps]
    .sort((one, other) => one.index - other.index)
    .filter(({ sureness, doubts }) => sureness >= leastSureness && !doubts.includes('poorlySeen'))
    .map((rep) => (isLoad ? rep : withoutPath(rep)))
    .map((rep) => (calibration?.from === 'body' ? { ...rep, romM: null } : rep))
    .map((rep) => (isSide ? rep : withoutSeenDepth(rep)));
}

const withoutPath = (rep: RepMeasurement): RepMeasurement => ({
  ...rep,
  driftForwardM: null,
  driftBackM: null,
  largestDeviation: null,
  bounces: null,
  downOnWayUpM: null,
});

const withoutSeenDepth = (rep: RepMeasurement): RepMeasurement =>
  rep.joints?.depthFrom === 'joints'
    ? { ...rep, joints: { ...rep.joints, depthM: null, depthOutcome: null, depthFrom: null } }
    : rep;
