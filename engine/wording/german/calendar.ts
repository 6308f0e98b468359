import type { CalendarMessageId } from '../english/calendar.ts';

/** The filming date; the advice itself comes from the filming card. */
export const calendar = {
  summary: 'Übungen filmen{count, plural, =0 {} other {: {exercises}}}',
} satisfies Readonly<Record<CalendarMessageId, string>>;
