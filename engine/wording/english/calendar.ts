/** The filming date; the advice itself comes from the filming card. */
export const calendar = {
  summary: 'Film your lifts{count, plural, =0 {} other {: {exercises}}}',
} as const;

export type CalendarMessageId = keyof typeof calendar;
