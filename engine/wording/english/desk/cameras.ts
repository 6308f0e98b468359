/** Clips that show one set from several sides. */
export const cameras = {
  swap: 'Other camera: {clip}. Show it large.',
  laid: '“{clip}” and “{lead}” now show one set, lined up {by, select, sound {by their sound} reps {by their reps} other {by hand}}.',
  nowTheOther:
    'This moment of “{clip}” is marked. Go to the same moment in the other clip and choose this action again.',
} as const;

export type CamerasMessageId = keyof typeof cameras;
