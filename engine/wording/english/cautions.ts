/** Cautions beside what they are read with. */
export const cautions = {
  title: 'Cautions',
  closing: 'Coaching opinion from video; not medical advice.',
} as const;

export type CautionMessageId = keyof typeof cautions;
