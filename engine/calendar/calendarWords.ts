import type { Language } from '../language/language.ts';

type CalendarWords = {
  /** {exercises}. */
  readonly summary: string;
  readonly summaryWithoutExercises: string;
};

/** The words of the filming date in each language; the advice itself comes from the filming card. */
export const calendarWords: Readonly<Record<Language, CalendarWords>> = {
  en: { summary: 'Film your lifts: {exercises}', summaryWithoutExercises: 'Film your lifts' },
  de: { summary: 'Übungen filmen: {exercises}', summaryWithoutExercises: 'Übungen filmen' },
};
