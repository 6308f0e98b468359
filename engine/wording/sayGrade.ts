import type { MissingGrade } from '../grading/grade.ts';
import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { MessageValue, MessageValues } from '../message/message.ts';
import type { ProgrammeFinding } from '../programme/finding.ts';
import { missingGradeWording, programmeWording, withinSentence } from './wordings.ts';

/** Why there is no grade, in a language. */
export const sayMissingGrade = ({ id, values }: MissingGrade, language: Language): string =>
  formatMessage(missingGradeWording[language][id], localeOf[language], values);

/** What a finding of the programme says. */
export type FindingWording = {
  readonly what: string;
  readonly why: string;
  readonly suggestion: string;
  readonly source: string;
};

/** Values that are names of exercises. */
const names: ReadonlySet<string> = new Set([
  ...['exercise', 'exercises', 'better', 'others', 'earlier', 'later', 'leftOut'],
]);

const isList = (value: MessageValue): value is readonly (string | number)[] => Array.isArray(value);

/** Names as they begin a sentence: the first keeps its capital, those after it stand inside. */
const atStart = (value: MessageValue, language: Language): MessageValue =>
  isList(value) ? value.map((name, at) => (at === 0 ? name : nameInside(language, String(name)))) : value;

const inside = (value: MessageValue, language: Language): MessageValue =>
  isList(value) ? value.map((name) => nameInside(language, String(name))) : nameInside(language, String(value));

/** A name inside a sentence. In German only its adjective loses the capital: "vorgebeugtes Rudern". */
function nameInside(language: Language, name: string): string {
  if (language !== 'de') return withinSentence(language, name);
  return /^\p{Lu}\p{Ll}+es? \p{Lu}/u.test(name) ? `${name.slice(0, 1).toLowerCase()}${name.slice(1)}` : name;
}

/** Each name in both of its forms; other values as they are. */
function bothForms(values: MessageValues, language: Language): MessageValues {
  const forms = Object.entries(values).flatMap(([key, value]): [string, MessageValue][] =>
    names.has(key) && typeof value !== 'number'
      ? [
          [key, atStart(value, language)],
          [`${key}Inside`, inside(value, language)],
        ]
      : [[key, value]],
  );
  return Object.fromEntries(forms);
}

/** The parts of a list, each worded by its own pattern with its place, name, why and numbers. */
function itemsOf(pattern: string, values: MessageValues, language: Language): string {
  const at = (key: string, index: number): string | number => {
    const list = values[key];
    return list !== undefined && isList(list) ? (list[index] ?? '') : '';
  };
  const { names: own = [] } = values;
  return (isList(own) ? own : [])
    .map((name, index) => {
      const why = withinSentence(language, String(at('whys', index)).replace(/\.$/, ''));
      return formatMessage(pattern, localeOf[language], {
        name: nameInside(language, String(name)),
        place: index + 1,
        ...{ from: at('from', index), to: at('to', index) },
        ...{ why, hasWhy: why === '' ? 'no' : 'yes' },
      });
    })
    .join('; ');
}

/** What a finding of the programme says, in a language; the names in it are in the language it was found in. */
export function sayFinding({ message: { id, values } }: ProgrammeFinding, language: Language): FindingWording {
  const { what, why, suggestion, source, item } = programmeWording[language][id];
  const items = item === undefined ? '' : itemsOf(item, values, language);
  const shown = { ...bothForms(values, language), items };
  const say = (pattern: string) => formatMessage(pattern, localeOf[language], shown).trim();
  return { what: say(what), why: say(why), suggestion: say(suggestion), source: say(source) };
}

/** Sentences, each with its full stop. */
const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?]) (?=\p{Lu}|\d)/u);

/** What several findings say one after the other: no reason and no sentence of advice twice. `why` is '' where it was said. */
export function sayFindings(findings: readonly ProgrammeFinding[], language: Language): FindingWording[] {
  const before = new Set<string>();
  const anew = (text: string): string => {
    const left = sentencesOf(text).filter((sentence) => !before.has(sentence));
    for (const sentence of left) before.add(sentence);
    return left.join(' ');
  };
  return findings.map((finding) => {
    const said = sayFinding(finding, language);
    return { ...said, why: anew(said.why), suggestion: anew(said.suggestion) };
  });
}
