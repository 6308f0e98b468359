/** How long work still takes, coarser the longer it is. */
export const timeLeft = {
  fewSeconds: 'a few seconds left',
  seconds: 'about {seconds} s left',
  minutes: 'about {minutes} min left',
  hours: 'about {hours} h left',
  hoursAndMinutes: 'about {hours} h {minutes} min left',
} as const;

export type TimeLeftMessageId = keyof typeof timeLeft;
