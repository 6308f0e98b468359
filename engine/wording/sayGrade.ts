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
  isList(value) ? value.map((name, at) => (at === 0 ? name : withinSentence(language, String(name)))) : value;

const inside = (value: MessageValue, language: Language): MessageValue =>
  isList(value) ? value.map((name) => withinSentence(language, String(name))) : withinSentence(language, String(value));

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

/** Parts of a list or steps, each worded by a pattern with its name, why and numbers. */
function partsOf(pattern: string, values: MessageValues, language: Language): string[] {
  const at = (key: string, index: number): string | number => {
    const list = values[key];
    return list !== undefined && isList(list) ? (list[index] ?? '') : '';
  };
  const { names: own = [] } = values;
  return (isList(own) ? own : []).map((name, index) => {
    const why = withinSentence(language, String(at('whys', index)).replace(/\.$/, ''));
    return formatMessage(pattern, localeOf[language], {
      name: withinSentence(language, String(name)),
      ...{ from: at('from', index), to: at('to', index) },
      ...{ why, hasWhy: why === '' ? 'no' : 'yes' },
    });
  });
}

/** A part as a sentence of its own. */
const asSentence = (part: string): string => `${part.slice(0, 1).toUpperCase()}${part.slice(1)}.`;

/** What a finding says, the steps that it proposes apart from the suggestion, each as a sentence. */
export type FindingInSteps = FindingWording & { readonly steps: readonly string[] };

function sayInSteps({ message: { id, values } }: ProgrammeFinding, language: Language): FindingInSteps {
  const { what, why, suggestion, source, item, step } = programmeWording[language][id];
  const items = item === undefined ? '' : partsOf(item, values, language).join('; ');
  const steps = step === undefined ? [] : partsOf(step, values, language).map(asSentence);
  const shown = { ...bothForms(values, language), items, steps: steps.length };
  const say = (pattern: string) => formatMessage(pattern, localeOf[language], shown).trim();
  return { what: say(what), why: say(why), suggestion: say(suggestion), source: say(source), steps };
}

/** Steps as they stand in a running text: "(1) Pulldown: it builds towards it. (2) …"; one alone has no number. */
export const numbered = (steps: readonly string[]): string[] =>
  steps.length === 1 ? [...steps] : steps.map((step, index) => `(${index + 1}) ${step}`);

/** What a finding of the programme says, in a language; the names in it are in the language it was found in. */
export function sayFinding(finding: ProgrammeFinding, language: Language): FindingWording {
  const { what, why, suggestion, source, steps } = sayInSteps(finding, language);
  return { what, why, suggestion: [suggestion, ...numbered(steps)].join(' '), source };
}

/** Sentences, each with its full stop. */
const sentencesOf = (text: string): string[] => text.split(/(?<=[.!?]) (?=\p{Lu}|\d)/u);

/** What several findings say one after the other: no reason and no sentence of advice twice. `why` is '' where it was said. */
export function sayFindings(findings: readonly ProgrammeFinding[], language: Language): FindingInSteps[] {
  const before = new Set<string>();
  const anew = (text: string): string => {
    const left = sentencesOf(text).filter((sentence) => !before.has(sentence));
    for (const sentence of left) before.add(sentence);
    return left.join(' ');
  };
  return findings.map((finding) => {
    const said = sayInSteps(finding, language);
    return { ...said, why: anew(said.why), suggestion: anew(said.suggestion) };
  });
}
