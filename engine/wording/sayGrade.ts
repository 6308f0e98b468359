import type { MissingGrade } from '../grading/grade.ts';
import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { MessageValue } from '../message/message.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import type { FindingWording } from './english/grade.ts';
import { missingGradeWording, programmeWording, withinSentence } from './wordings.ts';

/** Why there is no grade, in a language. */
export const sayMissingGrade = ({ id, values }: MissingGrade, language: Language): string =>
  formatMessage(missingGradeWording[language][id], localeOf[language], values);

/** Exercises that are suggested: their names stand inside a sentence, in the order they are best tried. */
function suggested(value: MessageValue, language: Language): string {
  const names = typeof value === 'object' ? value : [value];
  return names.map((name) => withinSentence(language, String(name))).join(', ');
}

/** What a finding of the programme says, in a language; the names in it are in the language it was found in. */
export function sayFinding({ message: { id, values } }: ProgrammeFinding, language: Language): FindingWording {
  const shown = Object.fromEntries(
    Object.entries(values).map(([name, value]) => [
      name,
      name === 'better' || (name === 'others' && typeof value === 'object') ? suggested(value, language) : value,
    ]),
  );
  const say = (pattern: string) => formatMessage(pattern, localeOf[language], shown);
  const { what, why, suggestion, source } = programmeWording[language][id];
  return { what: say(what), why: say(why), suggestion: say(suggestion), source: say(source) };
}
