import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { Follows, SetMeasurement } from '../motion/measurement.ts';
import {
  followedBecause as becauseInEnglish,
  followed as english,
  followedParts as partsInEnglish,
} from './english/following.ts';
import { followedBecauseForCoach } from './english/measuringForCoach.ts';
import {
  followedBecause as becauseInGerman,
  followed as german,
  followedParts as partsInGerman,
} from './german/following.ts';

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

/** The same said to the coach, with what to do about it. */
export const sayFollowedToCoach = ({ follows, followsBecause }: Followed): string =>
  formatMessage(english, localeOf.en, {
    part: partsInEnglish[follows],
    because: followedBecauseForCoach[followsBecause],
  });
