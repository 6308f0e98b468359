import type { MissingGradeId } from '../grading/grade.ts';
import type { Language } from '../language/language.ts';
import type { FindingMessageId } from '../programme/finding.ts';
import { type BreakdownMessageId, breakdown as englishBreakdown } from './english/breakdown.ts';
import { type CalendarMessageId, calendar as englishCalendar } from './english/calendar.ts';
import { film as englishFilm, type FilmMessageId } from './english/film.ts';
import { missingGrades as englishMissingGrades } from './english/grading.ts';
import { letter as englishLetter, type LetterWording } from './english/letter.ts';
import { programme as englishProgramme, type FindingWording } from './english/programme.ts';
import { sheet as englishSheet, type SheetMessageId } from './english/sheet.ts';
import { startPage as englishStartPage, type StartPageMessageId } from './english/startPage.ts';
import { breakdown as germanBreakdown } from './german/breakdown.ts';
import { calendar as germanCalendar } from './german/calendar.ts';
import { film as germanFilm } from './german/film.ts';
import { missingGrades as germanMissingGrades } from './german/grading.ts';
import { letter as germanLetter } from './german/letter.ts';
import { programme as germanProgramme } from './german/programme.ts';
import { sheet as germanSheet } from './german/sheet.ts';
import { startPage as germanStartPage } from './german/startPage.ts';

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

export const filmWording: InEveryLanguage<Patterns<FilmMessageId>> = { en: englishFilm, de: germanFilm };

export const calendarWording: InEveryLanguage<Patterns<CalendarMessageId>> = {
  en: englishCalendar,
  de: germanCalendar,
};

export const startPageWording: InEveryLanguage<Patterns<StartPageMessageId>> = {
  en: englishStartPage,
  de: germanStartPage,
};

export const missingGradeWording: InEveryLanguage<Patterns<MissingGradeId>> = {
  en: englishMissingGrades,
  de: germanMissingGrades,
};

export const programmeWording: InEveryLanguage<Readonly<Record<FindingMessageId, FindingWording>>> = {
  en: englishProgramme,
  de: germanProgramme,
};
