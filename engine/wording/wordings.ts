import type { MissingGradeId } from '../grading/grade.ts';
import type { Language } from '../language/language.ts';
import type { FindingMessageId } from '../programme/finding.ts';
import { film as englishFilm, type FilmMessageId } from './english/film.ts';
import { missingGrades as englishMissingGrades } from './english/grading.ts';
import { letter as englishLetter, type LetterWording } from './english/letter.ts';
import { programme as englishProgramme, type FindingWording } from './english/programme.ts';
import { film as germanFilm } from './german/film.ts';
import { missingGrades as germanMissingGrades } from './german/grading.ts';
import { letter as germanLetter } from './german/letter.ts';
import { programme as germanProgramme } from './german/programme.ts';

/** The wording of one topic in every language. */
type InEveryLanguage<Wording> = Readonly<Record<Language, Wording>>;

export const letterWording: InEveryLanguage<LetterWording> = { en: englishLetter, de: germanLetter };

export const missingGradeWording: InEveryLanguage<Readonly<Record<MissingGradeId, string>>> = {
  en: englishMissingGrades,
  de: germanMissingGrades,
};

export const programmeWording: InEveryLanguage<Readonly<Record<FindingMessageId, FindingWording>>> = {
  en: englishProgramme,
  de: germanProgramme,
};

export const filmWording: InEveryLanguage<Readonly<Record<FilmMessageId, string>>> = {
  en: englishFilm,
  de: germanFilm,
};
