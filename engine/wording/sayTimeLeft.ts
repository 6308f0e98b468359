import type { Language } from '../language/language.ts';
import { timeLeft as english } from './english/timeLeft.ts';
import { timeLeft as german } from './german/timeLeft.ts';
import { sayerOf } from './wordings.ts';

const wording = { en: english, de: german };

/** Time left as people say it, coarser the longer it is: "a few seconds left", "about 40 s left", "about 3 min left". */
export function sayTimeLeft(seconds: number, language: Language): string {
  const say = sayerOf(wording, language);
  if (seconds < 5) return say('fewSeconds');
  if (seconds < 55) return say('seconds', { seconds: Math.ceil(seconds / 10) * 10 });
  const whole = Math.max(1, Math.round(seconds / 60));
  if (whole < 60) return say('minutes', { minutes: whole });
  const [hours, minutes] = [Math.floor(whole / 60), whole % 60];
  return minutes === 0 ? say('hours', { hours }) : say('hoursAndMinutes', { hours, minutes });
}
