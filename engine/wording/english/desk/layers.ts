/** What measuring found, over the picture, for people who can’t see it. */
export const layers = {
  disc: 'Outline of the disc',
  point: 'The point being followed',
  joints: 'Joints on the near side, {guessed} of {count} guessed',
  path: 'Load path in {count, plural, one {# rep} other {# reps}}',
} as const;

export type LayerMessageId = keyof typeof layers;
