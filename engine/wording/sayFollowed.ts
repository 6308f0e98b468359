import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { Follows, SetMeasurement } from '../motion/measurement.ts';
import {
  followedBecause as becauseInEnglish,
  followed as english,
  followedParts as partsInEnglish,
} from './english/following.ts';
import { followedBecauseForCoach as forCoachInEnglish } from './english/measuringForCoach.ts';
import {
  followedBecause as becauseInGerman,
  followed as german,
  followedParts as partsInGerman,
} from './german/following.ts';
import { followedBecauseForCoach as forCoachInGerman } from './german/measuringForCoach.ts';

const words = {
  en: { sentence: english, parts: partsInEnglish, because: becauseInEnglish },
  de: { sentence: german, parts: partsInGerman, because: becauseInGerman },
} as const;

/** What can be followed, by name: "the near disc". */
export const sayFollowedPart = (part: Follows, language: Language): string => words[language].parts[part];

type Followed = Pick<SetMeasurement, 'follows' | 'followsBecause'>;

/** What is followed through a clip and why, said to the trainee in a language. */
export function sayFollowed({ follows, followsBecause }: Followed, language: Language): string {
  const { sentence, parts, because } = words[language];
  return formatMessage(sentence, localeOf[language], { part: parts[follows], because: because[followsBecause] });
}

const becauseForCoach = { en: forCoachInEnglish, de: forCoachInGerman } as const;

/** The same said to the person at the desk, with what to do about it. */
export function sayFollowedToCoach({ follows, followsBecause }: Followed, language: Language): string {
  const { sentence, parts } = words[language];
  const because = becauseForCoach[language][followsBecause];
  return formatMessage(sentence, localeOf[language], { part: parts[follows], because });
}
