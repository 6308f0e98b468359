import type { TimeLeftMessageId } from '../english/timeLeft.ts';

export const timeLeft: Readonly<Record<TimeLeftMessageId, string>> = {
  fewSeconds: 'noch ein paar Sekunden',
  seconds: 'noch etwa {seconds} s',
  minutes: 'noch etwa {minutes} min',
  hours: 'noch etwa {hours} h',
  hoursAndMinutes: 'noch etwa {hours} h {minutes} min',
};
