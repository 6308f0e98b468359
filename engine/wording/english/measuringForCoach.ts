import type { FollowReason, Unseen } from '../../motion/measurement.ts';
import type { WarningId } from '../../recording/warnings.ts';

/** What a measure warns of, said to the person at the desk, who can mend it. */
export const warningsForCoach = {
  tooFewFrames: 'The clip has {frames} frames, too few to find a rep in.',
  fewFramesPerSecond:
    'The clip has about {framesPerSecond} frames a second, so phases are exact to one frame, {seconds, number, ::.00} s, at best.',
  fromBody:
    'Reps and tempo are read from the body, which is less exact than a disc. There are no lengths and speeds, because nobody is seen standing upright from head to foot.',
  aboutFromBody:
    'Reps and tempo are read from the body, which is less exact than a disc. Lengths and speeds are “about”: they assume an adult of average height and are good to ± {percent} % at best. There is no drift.',
  lengthsFromBody: 'Everything is read from the body, which is less exact than a disc.',
  noScale:
    'There is no scale, so there are no lengths and speeds; give the length of something in the plane of the load.',
  farOffAxis: 'The camera is {degrees}° off square, so there is no sideways drift.',
  offAxis: 'The camera is about {degrees}° off square; sideways measures are corrected for it and less certain.',
  notFromSide: 'The clip is not filmed from the side, so there are no sideways drift and no joint angles.',
  nothingUpright:
    'Nothing upright was found in the room, so the camera is taken to be level; draw a plumb line along a post.',
  facingUnknown: 'The facing is not known, so there is no drift; set it.',
  hold: 'A hold has no reps; its length comes from its start and end, which are marked by hand.',
  noRep: 'Nothing that was followed moves there and back the way a rep does, so no reps were found.',
  unlikelyHeight:
    'With this scale, body height would come to {metres, number, ::.0} m; check that the disc is the right one, and its diameter.',
  cameraMoves:
    'The camera moves, and the background shows too little to correct for it, so there are no heights, drift and speeds.',
  noDisc:
    'No disc was found that moves with the lift; click the middle of the near disc in a frame that shows all of it.',
  discLost: 'The disc can’t be seen in {lost} of {frames} frames; click it where it is lost, if it shows there.',
  discDoubtful: 'The disc’s place is uncertain in {doubtful} of {frames} frames; click its middle to make sure.',
  noRimAtClick: 'No disc’s rim shows around the click at frame {frame}, so that click was left out.',
  pointLost: 'The point can’t be made out in {lost} of {frames} frames; click it again where it is lost.',
  nobodyAtClick:
    'Nobody was found at the click in frame {frame}, so that click was left out; click the middle of the trunk in a frame that shows all of it.',
  nobodySeen:
    'Nobody could be seen in this clip, so there are no joints; film from the side with the whole body in the picture.',
  seldomSeen:
    'The body could be seen in only {percent} % of the clip, so joints are missing elsewhere; film from the side with the whole body in the picture.',
} as const satisfies Readonly<Record<WarningId, string>>;

/** Why joint angles are missing from a rep; `lost` lists what they would have been. */
export const unseenForCoach =
  '{part, select, nose {The face} ear {The head} shoulder {The shoulder} elbow {The elbow} wrist {The wrist} hip {The hip} knee {The knee} other {The ankle}} {why, select, behindDisc {is behind the disc} outOfFrame {is at or beyond the edge of the picture} other {can’t be made out}}, so {lost} can’t be measured.';

export const lostForCoach = {
  knee: 'the knee angle',
  hip: 'the hip angle',
  trunkLean: 'trunk lean',
  head: 'the head against the trunk',
} as const satisfies Readonly<Record<Unseen['lost'][number], string>>;

/** Why something is followed, said to the person at the desk, who can mend it. */
export const followedBecauseForCoach = {
  clicked: 'it was clicked',
  chosen: 'it was chosen',
  discMovesWithLifter: 'it moves with the lift',
  discUnchecked: 'nothing else was seen to check it against',
  noDisc:
    'no disc was found that moves with the lift; click the middle of the near disc in a frame that shows all of it',
  discStandsStill: 'the disc that was found stands still during the lift; click the right one, if it shows',
  discMovesOtherwise: 'the disc that was found does not move with the lift; click the right one, if it shows',
  discSeldomSeen: 'the disc is hidden for too much of the lift; click it where it is lost, if it shows there',
  discOfUnlikelySize:
    'going by the disc that was found, body height would be far too tall or too short; check its diameter',
  noDiscExpected: 'this exercise has no disc to follow',
  nothingSeen: 'neither a disc nor a body could be followed',
} as const satisfies Readonly<Record<FollowReason, string>>;
