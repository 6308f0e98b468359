/** Two clips of one exercise side by side. */
export const compare = {
  compare: 'Compare',
  review: 'Review',
  beside: 'Compare with',
  chooseClip: 'Choose a clip',
  clip: '{date}, {name}',
  thisClip: '{date}, {name} (this clip)',
  reading: 'Opening the clip…',
  leftNeedsReps: 'Mark the reps of this clip first: the two clips are compared rep by rep.',
  rightNeedsReps: 'Mark the reps of the other clip first: the two clips are compared rep by rep.',
  left: 'Left',
  right: 'Right',
  repOf: '{side}: rep',
  notShown: 'This clip can’t be shown: its file may be missing or damaged.',
  readout: 'frame {frame}, {time}; {seconds} s into rep {rep}',
  bothClips: 'Both clips',
  play: 'Play',
  pause: 'Pause',
  frameBack: 'Previous frame',
  frameOn: 'Next frame',
  speed: 'Speed',
  times: '{speed} ×',
} as const;

export type CompareMessageId = keyof typeof compare;
