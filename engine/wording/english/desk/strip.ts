/** The timeline of a clip: reps, flags, phases and curves. */
export const strip = {
  position: 'Position in the clip',
  frameAt: 'frame {frame}, {time}',
  edge: '{edge, select, start {Start} end {End} other {Stretched end}} of rep {rep}',
  edgeAt: 'frame {frame}, {time}{set, select, measured {, measured} byHand {, set by hand} other {}}',
  noReps: 'No reps yet: {start} marks the start, {stretched} the stretched end, {end} the end',
  goToFlag: 'Go to flag: {severity}, {criterion}, {reps}, {time}',
  goToSuggestion: 'Go to suggestion: {severity}, {criterion}, {reps}, {time}',
  dragFlag: 'Drag to another moment',
  height: 'height',
  speed: 'speed',
  betweenReps: 'between reps',
  phaseAt: 'rep {rep}, {phase}',
  phaseFor: 'rep {rep}, {phase} {seconds} s',
  heightAt: 'height {sure, select, no {about } other {}}{centimetres} cm',
  speedAt: 'speed {sure, select, no {about } other {}}{metresPerSecond} m/s',
  notVisible: 'not visible',
  phases: 'Phases of each rep',
  repPhases: 'Rep {rep}: {phases}',
  phaseSpan: '{phase} from {from} to {to}',
  notCounted: 'Not counted, from {from} to {to}: {doubts}',
} as const;

export type StripMessageId = keyof typeof strip;
