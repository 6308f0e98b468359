/** The picture of a clip, its controls and times. */
export const stage = {
  picture: 'Picture',
  clip: 'Clip {name}',
  stillRead: 'This clip is still being read; it plays once that is done.',
  clipMissing: 'The clip can’t be shown: its file may be missing or damaged.',
  frameMissing: 'This frame can’t be shown: the clip’s file may be missing or damaged.',
  passedOver: 'Frame {frame, number} can’t be decoded, so playing backwards passes over it.',
  pause: 'Pause',
  speed: 'Speed',
  times: '{factor} ×',
  frame: 'Frame',
  ofFrames: 'of {count, number}',
  timeCode: 'Time code',
  timeCodeHint: 'Type a time code and press Enter to go there',
  noTimeCode: 'No frame of this clip has the time code “{typed}”; the last one is {last}.',
  clipTime: 'Clip time',
  realTime: 'Real time',
  inRep: 'In the rep',
  noRep: 'no rep',
  repTime: 'rep {rep} + {time}',
  markReps: 'Mark reps',
  removeRep: 'Remove rep {rep}',
  onPicture: 'On the picture',
  measuring: 'Measuring',
  underWay: 'Measuring {share}',
} as const;

export type StageMessageId = keyof typeof stage;
