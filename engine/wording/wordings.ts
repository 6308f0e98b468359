import type { MissingGradeId } from '../grading/grade.ts';
import { type Language, localeOf } from '../language/language.ts';
import { formatMessage } from '../message/formatMessage.ts';
import type { MessageValues } from '../message/message.ts';
import type { FindingMessageId } from '../programme/finding.ts';
import { type CautionMessageId, cautions as englishCautions } from './english/cautions.ts';
import { type EquipmentMessageId, equipment as englishEquipment } from './english/equipment.ts';
import {
  type CalendarMessageId,
  calendar as englishCalendar,
  film as englishFilm,
  type FilmMessageId,
} from './english/filming.ts';
import {
  type BreakdownMessageId,
  breakdown as englishBreakdown,
  missingGrades as englishMissingGrades,
} from './english/grade.ts';
import { letter as englishLetter, type LetterWording } from './english/letter.ts';
import { programme as englishProgramme, type FindingPatterns } from './english/programme.ts';
import { sheet as englishSheet, type SheetMessageId } from './english/sheet.ts';
import { startPage as englishStartPage, type StartPageMessageId } from './english/startPage.ts';
import { work as englishWork, type WorkMessageId } from './english/work.ts';
import { cautions as germanCautions } from './german/cautions.ts';
import { equipment as germanEquipment } from './german/equipment.ts';
import { calendar as germanCalendar, film as germanFilm } from './german/filming.ts';
import { breakdown as germanBreakdown, missingGrades as germanMissingGrades } from './german/grade.ts';
import { letter as germanLetter } from './german/letter.ts';
import { programme as germanProgramme } from './german/programme.ts';
import { sheet as germanSheet } from './german/sheet.ts';
import { startPage as germanStartPage } from './german/startPage.ts';
import { work as germanWork } from './german/work.ts';

/** The wording of one topic in every language. */
type InEveryLanguage<Wording> = Readonly<Record<Language, Wording>>;

/** ICU patterns by the ids of one topic. */
type Patterns<Id extends string> = Readonly<Record<Id, string>>;

export const letterWording: InEveryLanguage<LetterWording> = { en: englishLetter, de: germanLetter };

export const sheetWording: InEveryLanguage<Patterns<SheetMessageId>> = { en: englishSheet, de: germanSheet };

export const breakdownWording: InEveryLanguage<Patterns<BreakdownMessageId>> = {
  en: englishBreakdown,
  de: germanBreakdown,
};

export const cautionWording: InEveryLanguage<Patterns<CautionMessageId>> = {
  en: englishCautions,
  de: germanCautions,
};

export const filmWording: InEveryLanguage<Patterns<FilmMessageId>> = { en: englishFilm, de: germanFilm };

export const calendarWording: InEveryLanguage<Patterns<CalendarMessageId>> = {
  en: englishCalendar,
  de: germanCalendar,
};

export const startPageWording: InEveryLanguage<Patterns<StartPageMessageId>> = {
  en: englishStartPage,
  de: germanStartPage,
};

export const equipmentWording: InEveryLanguage<Patterns<EquipmentMessageId>> = {
  en: englishEquipment,
  de: germanEquipment,
};

export const workWording: InEveryLanguage<Patterns<WorkMessageId>> = { en: englishWork, de: germanWork };

export const missingGradeWording: InEveryLanguage<Patterns<MissingGradeId>> = {
  en: englishMissingGrades,
  de: germanMissingGrades,
};

export const programmeWording: InEveryLanguage<Readonly<Record<FindingMessageId, FindingPatterns>>> = {
  en: englishProgramme,
  de: germanProgramme,
};

/** Says a text of one topic in one language; throws where a value is missing. */
export type Say<Id extends string> = (id: Id, values?: MessageValues) => string;

/** How a language says the texts of a topic, from its wording. */
export function sayerOf<Id extends string>(
  wording: Readonly<Record<Language, Readonly<Record<Id, string>>>>,
  language: Language,
): Say<Id> {
  return (id, values) => formatMessage(wording[language][id], localeOf[language], values);
}

/** A name or clause of ours as it stands inside a sentence: English takes its capital off, German that of an adjective. */
export function withinSentence(language: Language, words: string): string {
  if (language === 'en') return lowerFirst(words);
  return beginsWithAdjective.test(words) ? `${words.slice(0, 1).toLowerCase()}${words.slice(1)}` : words;
}

/** German names of exercises that begin with an adjective before a noun: "Vorgebeugtes Rudern", but not "Face Pull". */
const beginsWithAdjective =
  /^(\p{Lu}\p{Ll}+es(?= (\p{Ll}+es )?\p{Lu})|(Ein(arm|bein|seit)ig|Eng|Gestreckt|Negativ|Umgekehrt)er?(?= \p{L}))/u;

/** Words that keep their capital wherever they stand. */
const proper: ReadonlySet<string> = new Set([
  ...[
    'Arnold',
    'Bulgarian',
    'Copenhagen',
    'Cossack',
    'Cuban',
    'German',
    'Jefferson',
    'Nordic',
    'Olympic',
    'Pallof',
    'Pendlay',
  ],
  ...['Romanian', 'Russian', 'Scott', 'Smith', 'Spanish', 'Turkish', 'Yates', 'Zercher', 'Zottman'],
]);

/** First letter small; proper names stay, and so do capitals that stand for a shape or for themselves ("T-bar", "EZ-bar"). */
function lowerFirst(words: string): string {
  const [word = ''] = words.split(/[ -]/, 1);
  const [first = '', second = '', ...others] = words;
  const isShape = word.length === 1 && second === '-';
  const isCapitals = second !== '' && second === second.toUpperCase() && second !== second.toLowerCase();
  return proper.has(word) || isShape || isCapitals ? words : `${first.toLowerCase()}${second}${others.join('')}`;
}

/** The name of an exercise inside a sentence: "the Romanian deadlift"; German sets it apart, since it can't be declined. */
export function namedInSentence(language: Language, name: string): string {
  return language === 'en' ? `the ${lowerFirst(name)}` : `„${name}“`;
}
