import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { Message, MessageValue } from '../message/message.ts';
import type { Unseen } from '../motion/measurement.ts';
import type { MeasuringMessageId } from '../motion/suggestion.ts';
import type { Warning } from '../recording/warnings.ts';
import { measuring as english } from './english/measuring.ts';
import {
  lostForCoach as lostInEnglish,
  unseenForCoach as unseenInEnglish,
  warningsForCoach as warningsInEnglish,
} from './english/measuringForCoach.ts';
import { measuring as german } from './german/measuring.ts';
import {
  lostForCoach as lostInGerman,
  unseenForCoach as unseenInGerman,
  warningsForCoach as warningsInGerman,
} from './german/measuringForCoach.ts';

const patternsOf: Readonly<Record<Language, Readonly<Record<MeasuringMessageId, string>>>> = {
  en: english,
  de: german,
};
const forCoach = {
  en: { warnings: warningsInEnglish, unseen: unseenInEnglish, lost: lostInEnglish },
  de: { warnings: warningsInGerman, unseen: unseenInGerman, lost: lostInGerman },
} as const;
const to: Readonly<Record<Language, string>> = { en: 'to', de: 'bis' };

/** Rising numbers, with three or more in a row shortened to a span: 1 to 3, 5. */
function runsOf(numbers: readonly number[], language: Language): string[] {
  const runs: number[][] = [];
  for (const number of numbers) {
    const run = runs.at(-1);
    if (run?.at(-1) === number - 1) run.push(number);
    else runs.push([number]);
  }
  return runs.flatMap((run) => (run.length < 3 ? run.map(String) : [`${run[0]} ${to[language]} ${run.at(-1)}`]));
}

const isNumber = (value: string | number): value is number => typeof value === 'number';

const shownValue = (value: MessageValue, language: Language): MessageValue =>
  typeof value === 'object' ? runsOf(value.filter(isNumber), language) : value;

/** What messages that were kept before they told of it don't hold: the ± of praise, its number, and that a number is about. */
const untold = { within: 0, least: 0, most: 0, about: 'no' } as const;

/** What a measure warns of or proposes, said to the trainee in a language. */
export function sayMeasuring({ id, values }: Message<MeasuringMessageId>, language: Language): string {
  const shown = Object.entries(values).map(([name, value]) => [name, shownValue(value, language)]);
  return formatMessage(patternsOf[language][id], localeOf[language], { ...untold, ...Object.fromEntries(shown) });
}

/** What a measure warns of, said to the person at the desk in a language, with what to do about it. */
export const sayWarningToCoach = ({ id, values }: Warning, language: Language): string =>
  formatMessage(forCoach[language].warnings[id], localeOf[language], values);

/** What can't be seen of a rep, said to the person at the desk in a language. */
export function sayUnseenToCoach({ part, why, lost }: Unseen, language: Language): string {
  const { unseen, lost: names } = forCoach[language];
  return formatMessage(unseen, localeOf[language], {
    part,
    why,
    lost: lost.map((asked) => names[asked]),
  });
}

const isMeasuringId = (id: string): id is MeasuringMessageId => Object.hasOwn(english, id);

/** What a stored message says, where it is one of measuring; null where it is another's or from a newer version. */
export function sayStoredMeasuring({ id, values }: Message, language: Language): string | null {
  return isMeasuringId(id) ? sayMeasuring({ id, values }, language) : null;
}
