/** Clips that show one set from several sides. */
export const cameras = {
  swap: 'Other camera: {clip}. Show it large.',
  laid: '“{clip}” and “{lead}” show one set now, laid together {by, select, sound {by their sound} reps {by their reps} other {by a moment set by hand}}.',
  nowTheOther: 'This moment of “{clip}” is marked; now show the same moment in the other clip and ask for it again.',
} as const;

export type CamerasMessageId = keyof typeof cameras;
