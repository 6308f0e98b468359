import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { RepDoubt, RepMeasurement } from '../motion/measurement.ts';
import { offered as english } from './english/offered.ts';
import { offered as german } from './german/offered.ts';

const patternsOf = { en: english, de: german } as const satisfies Readonly<Record<Language, unknown>>;

/** "2 movements were not counted as reps", without a full stop. */
export const sayNotCounted = (count: number, language: Language): string =>
  formatMessage(patternsOf[language].notCounted, localeOf[language], { count });

/** What speaks against a rep: "the clip ends in the middle of it". */
export const sayDoubt = (doubt: RepDoubt, language: Language): string => patternsOf[language][doubt];

/** Why a movement was not counted, its doubts one after the other; never empty. */
export const sayDoubts = ({ doubts }: Pick<RepMeasurement, 'doubts'>, language: Language): string =>
  (doubts.length === 0 ? (['unlike'] as const) : doubts).map((doubt) => sayDoubt(doubt, language)).join('; ');
