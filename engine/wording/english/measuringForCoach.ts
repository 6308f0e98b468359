import type { FollowReason, Unseen } from '../../motion/measurement.ts';
import type { WarningId } from '../../recording/warnings.ts';

/** What a measure warns of, said to the person at the desk, who can mend it. */
export const warningsForCoach = {
  tooFewFrames: 'The clip has {frames} frames, which is too few to find a rep in.',
  fewFramesPerSecond:
    'The clip has about {framesPerSecond} frames a second, so phases are accurate to one frame, {seconds, number, ::.00} s, at best.',
  fromBody:
    'Reps and tempo are read from the body, which is less exact than a disc; lengths and speeds are not given, because the lifter is never seen standing upright from head to foot.',
  aboutFromBody:
    'Reps and tempo are read from the body, which is less exact than a disc. Lengths and speeds are given as “about”: they assume an adult of average height and are good to ± {percent} % at best. Drift is not given.',
  lengthsFromBody: 'Everything is read from the body, which is less exact than a disc.',
  noScale:
    'There is no scale, so lengths and speeds are not given; give the length of something in the plane of the bar.',
  farOffAxis: 'The camera is turned {degrees}° out of square, so sideways drift is not given.',
  offAxis:
    'The camera is turned about {degrees}° out of square; sideways measures are corrected for it and less certain.',
  notFromSide: 'The clip is not filmed from the side, so sideways drift and joint angles are not given.',
  nothingUpright:
    'Nothing upright was found in the room, so the camera is taken to be level; draw a plumb line along a post.',
  facingUnknown: 'Which way the lifter faces is not known, so drift is not given; say which.',
  hold: 'A hold has no reps; its length comes from the edges you set.',
  noRep: 'Nothing that was followed moves there and back the way a rep does, so no reps were found.',
  unlikelyHeight:
    'With this scale the lifter would be {metres, number, ::.0} m tall; check that the disc is the bar’s and its diameter.',
  cameraMoves:
    'The camera moves and the background shows too little to take that out, so heights, drift and speeds are not given.',
  noDisc:
    'No disc was found that moves with the lifter; click the middle of the near disc at a frame that shows all of it.',
  discLost: 'The disc can’t be seen in {lost} of {frames} frames; click it where it is lost, if it shows there.',
  discDoubtful: 'The disc’s place is doubtful in {doubtful} of {frames} frames; click its middle to make sure.',
  noRimAtClick: 'No rim of a disc shows round the click at frame {frame}, so that click was left out.',
  pointLost: 'The point can’t be told apart in {lost} of {frames} frames; click it again where it is lost.',
  nobodyAtClick:
    'No lifter was found at the click in frame {frame}, so that click was left out; click the middle of the trunk in a frame that shows all of it.',
  nobodySeen:
    'Nobody could be seen in this clip, so there are no joints; film from the side with the whole body in the picture.',
  seldomSeen:
    'The lifter could be seen in only {percent} % of the clip, so joints are missing elsewhere; film from the side with the whole body in the picture.',
} as const satisfies Readonly<Record<WarningId, string>>;

/** Why a joint's angles are missing from a rep; `lost` lists what they would have been. */
export const unseenForCoach =
  '{part, select, nose {The face} ear {The head} shoulder {The shoulder} elbow {The elbow} wrist {The wrist} hip {The hip} knee {The knee} other {The ankle}} {why, select, behindDisc {is behind the disc} outOfFrame {is at the edge of the picture or beyond it} other {can’t be made out}}, so {lost} can’t be measured.';

export const lostForCoach = {
  knee: 'the knee’s bend',
  hip: 'the hip’s bend',
  trunkLean: 'the trunk’s lean',
  head: 'the head against the trunk',
} as const satisfies Readonly<Record<Unseen['lost'][number], string>>;

/** Why something is followed, said to the coach, who can mend it. */
export const followedBecauseForCoach = {
  clicked: 'it was clicked',
  chosen: 'this was chosen',
  discMovesWithLifter: 'it moves with the lifter',
  discUnchecked: 'nothing else was seen to check it against',
  noDisc:
    'no disc was found that moves with the lifter; click the middle of the near disc at a frame that shows all of it',
  discStandsStill: 'the disc that was found stands still while the lifter moves; click the right one, if it shows',
  discMovesOtherwise: 'the disc that was found does not move the way the lifter does; click the right one, if it shows',
  discSeldomSeen: 'the disc is hidden for too much of the lift; click it where it is lost, if it shows there',
  discOfUnlikelySize:
    'going by the disc that was found, the lifter would be far too tall or too short; check its diameter',
  noDiscExpected: 'this exercise has no disc to follow',
  nothingSeen: 'neither a disc nor the lifter could be followed',
} as const satisfies Readonly<Record<FollowReason, string>>;
