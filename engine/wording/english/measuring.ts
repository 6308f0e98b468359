import type { MeasuringMessageId } from '../../motion/suggestion.ts';

const also = '{alsoCount, plural, =0 {} one { Rep {alsoReps} shows it too.} other { Reps {alsoReps} show it too.}}';
const verb = '{verb, select, lowers {lowers} other {returns}}';
const where =
  '{where, select, bottom {at the bottom} top {at the top} stretchedEnd {at the stretched end} other {at the shortened end}}';
const asked = `{asked, select, targetExactly {the target is {askedToS, number, ::.#} s} targetAtMost {the target is at most {askedToS, number, ::.#} s} targetBetween {the target is {askedFromS, number, ::.#} to {askedToS, number, ::.#} s} planNone {the plan asks for none} other {the plan asks for {askedToS, number, ::.#} s}}`;
const about = '{about, select, yes {about } other {}}';
const seconds = `${about}{value, number, ::.0} s ± {within, number, ::.0} s`;
const otherSeconds = `${about}{otherValue, number, ::.0} s ± {otherWithin, number, ::.0} s`;
const centimetres = `${about}{value} cm ± {within} cm`;
const otherCentimetres = `${about}{otherValue} cm ± {otherWithin} cm`;
const percent = `${about}{value} % ± {within} %`;
const every = '{reps, plural, one {The rep} other {Every rep}}';
const fromTo = `${about}{fromS, number, ::.0}{spread, select, none {} other { to {toS, number, ::.0}}} s{within, plural, =0 {} other { ± {within, number, ::.0} s}}`;

/** What measures warn of, said to the trainee, and what suggestions say. */
export const measuring = {
  tooFewFrames: 'The clip has {frames} frames, which is too few to find a rep in.',
  fewFramesPerSecond:
    'The clip has about {framesPerSecond} frames a second, so phases are accurate to {seconds, number, ::.00} s at best.',
  fromBody: 'Reps and tempo are read from the body, which is less exact than a disc; lengths and speeds are not given.',
  aboutFromBody:
    'Reps and tempo are read from the body, which is less exact than a disc. Lengths and speeds are given as “about”: they assume an adult of average height and are good to ± {percent} % at best.',
  lengthsFromBody: 'Everything is read from the body, which is less exact than a disc.',
  noScale: 'Nothing of known length was seen, so lengths and speeds are not given.',
  farOffAxis: 'The camera is {degrees}° off square, so drift is not given.',
  offAxis: 'The camera is about {degrees}° off square; measures along the floor are corrected for it and less certain.',
  notFromSide: 'The clip is not filmed from the side, so drift and joint angles are not given.',
  nothingUpright: 'Nothing upright was found in the room, so the camera is taken to be level.',
  facingUnknown: 'Which way you face could not be seen, so drift is not given.',
  hold: 'A hold has no reps.',
  noRep: 'Nothing that was followed moves there and back the way a rep does, so no reps were found.',
  unlikelyHeight: 'The scale is doubtful: it would make you {metres, number, ::.0} m tall.',
  cameraMoves: 'The camera moves, and that could not be corrected, so heights, drift and speeds are not given.',
  noDisc: 'No disc was found that moves with you.',
  discLost: 'The disc can’t be seen in {lost} of {frames} frames.',
  discDoubtful: 'The disc’s position is doubtful in {doubtful} of {frames} frames.',
  noRimAtClick: 'The disc could not be made out in frame {frame}.',
  pointLost: 'The point that was followed can’t be told apart in {lost} of {frames} frames.',
  nobodyAtClick: 'The lifter could not be made out in frame {frame}.',
  nobodySeen:
    'Nobody could be seen in full, so there are no joints; film from the side with the whole body in the picture.',
  seldomSeen:
    'You could be seen in full in only {percent} per cent of the clip; film from the side with the whole body in the picture.',
  eccentricTime: `Rep {rep} ${verb} in ${seconds}; ${asked}.${also}`,
  eccentricQuicker: `Rep {rep} ${verb} in ${seconds}, rep {otherRep} in ${otherSeconds}; {asked, select, asTheFirst {the last reps should take as long as the first} other {the reps of a set should take equally long}}.${also}`,
  speedDips: `Rep {rep} ${verb}, slows by ${percent} on the way and speeds up again; the movement should be smooth.${also}`,
  lastThirdDrops: `Rep {rep} ${verb} through the last third of the way in ${percent} of the time; at an even pace it would be 33 %.${also}`,
  pauseTime: `Rep {rep} pauses for ${seconds} ${where}; ${asked}.${also}`,
  pauseShorter: `Rep {rep} pauses for ${seconds} ${where}, rep {otherRep} for ${otherSeconds}; the last pauses should be as long as the first.${also}`,
  turnsRound: `Rep {rep} {about, select, yes {seems to turn} other {turns}} round {times, plural, =2 {twice} other {# times}} ${where}; once is enough.${also}`,
  holdTime: `Rep {rep} is held for ${seconds}; ${asked}.${also}`,
  creaseAboveKnee: `Rep {rep} turns round with the hip crease ${centimetres} above the top of the knee; it should go at least level with it.${also}`,
  rangeShorter: `Rep {rep} moves over ${centimetres}, rep {otherRep} over ${otherCentimetres}; {asked, select, asTheFirst {the last reps should go as far as the first} other {the reps of a set should go equally far}}.${also}`,
  turnsEarly: `Rep {rep} is ${percent} of the range short ${where}, compared with rep {otherRep}; {asked, select, asTheFirst {the last reps should go as far as the first} other {the reps of a set should go equally far}}.${also}`,
  leavesPath: `Rep {rep} leaves its path by ${centimetres} {direction, select, forward {forwards} other {backwards}}; up to {limit} cm is fine.${also}`,
  goesBack: `Rep {rep} {path, select, up {sinks on its way up} other {goes back on its way to the shortened end}} by ${centimetres}; it should go one way only.${also}`,
  headMoves: `In rep {rep} the head moves against the trunk by ${about}{value}° ± {within}°, chin {direction, select, down {down} other {up}}; up to {limit}° is fine.${also}`,
  everyEccentric: `${every} ${verb} in ${fromTo}; ${asked}.`,
  everyPause: `${every} pauses for ${fromTo} ${where}; ${asked}.`,
  everyHold: `${every} is held for ${fromTo}; ${asked}.`,
  everyPath: `${every} stays within ${about}{value} cm{within, plural, =0 {} other { ± {within} cm}} of its path; up to {limit} cm is fine.`,
  everyDepth: `${every} brings the hip crease below the top of the knee{least, plural, =0 {} other {, by {reps, plural, one {} other {at least }}${about}{least} cm ± {within} cm}}.`,
  everyHead: `${every} keeps the head within {most, plural, =0 {{limit}° of its place against the trunk} other {${about}{most}° ± {within}° of its place against the trunk; up to {limit}° is fine}}.`,
} as const satisfies Readonly<Record<MeasuringMessageId, string>>;
