/** Why cautions stand on a screen. */
export const cautions = {
  title: 'Cautions',
  pain: 'Pain noted',
  note: '“{note}”',
  painNote: 'Pain noted: “{note}”',
  stop: 'Stop flag: {voice, select, self {it comes before everything else} other {say so before anything else}}',
  minor: '{voice, select, self {I am under 18} other {Under 18}}',
  lifts: 'These lifts need care',
  read: 'Read the cautions',
} as const;

export type CautionsMessageId = keyof typeof cautions;
