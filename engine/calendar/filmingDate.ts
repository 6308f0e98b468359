import { type Block, plainText, type RacksideDocument } from '../document/document.ts';
import { tidy } from '../document/words.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import type { Review } from '../review/review.ts';
import { exerciseName } from '../sheet/flagRows.ts';
import { formatDurationS } from '../time/writtenTime.ts';
import { calendarWording, sayerOf } from '../wording/wordings.ts';
import { contentLine, dateValue, textValue, utcValue } from './contentLine.ts';

export type FilmingDate = {
  /** The day to film on, an ISO date. */
  readonly date: string;
  /** When this file is made, an ISO time. */
  readonly stamp: string;
  /** How many versions of this date went out before; a calendar takes the one with the highest number. */
  readonly sequence?: number;
  /** A reminder so many whole hours before the day begins: 6 = at 18:00 of the day before. None without it. */
  readonly reminderHours?: number;
  /** The page on how to film, which is the event's text. */
  readonly card: RacksideDocument;
  /** Ids of the exercises that may be filmed; null where a clinician has to be asked first. */
  readonly exerciseIds: readonly string[] | null;
};

/** The id in files written by hand: all of these sessions share it. */
const usualId = 'session';

/** A UID that depends on the session alone, so that a newer file replaces the event (RFC 5545, section 3.8.4.7). */
function uidOf({ session, trainee }: Review): string {
  const own = session.id === usualId ? [session.id, session.date, trainee.name.toWellFormed()] : [session.id];
  return `film-${own.map(encodeURIComponent).join('-')}@rackside.invalid`;
}

function blockLines(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
      return ['', block.text];
    case 'paragraph':
      return [plainText(block.inlines)];
    case 'list':
      return block.items.map((item) => `- ${plainText(item)}`);
    case 'notice':
      return ['', block.title, ...block.paragraphs.map((line) => `- ${plainText(line)}`), ''];
    case 'table':
    case 'picture':
      return [];
  }
}

const cardText = ({ blocks }: RacksideDocument): string =>
  blocks
    .flatMap(blockLines)
    .join('\n')
    .replace(/\n{3,}/g, '\n\n')
    .trim();

function summaryOf({ exerciseIds }: FilmingDate, catalogue: Catalogue): string {
  const say = sayerOf(calendarWording, catalogue.language ?? 'en');
  if (exerciseIds === null) return say('clinicianFirst');
  const exercises = new Set(exerciseIds.map((id) => tidy(exerciseName(catalogue, id))));
  return say('summary', { count: exercises.size, exercises: [...exercises] });
}

function reminder(hours: number | undefined, summary: string): string[] {
  if (hours === undefined) return [];
  return [
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${textValue(summary)}`,
    `TRIGGER:-${formatDurationS(hours * 3600)}`,
    'END:VALARM',
  ];
}

/**
 * A calendar file (iCalendar, RFC 5545) with one event: the day to film a session's exercises again, all day and without
 * blocking it, with the page on how to film as its text, in the catalogue's language. Throws a RangeError for a date or time
 * that is not valid.
 */
export function filmingDate(review: Review, catalogue: Catalogue, filming: FilmingDate): string {
  const { date, stamp, sequence = 0, reminderHours } = filming;
  const { language = 'en' } = catalogue;
  const summary = summaryOf(filming, catalogue);
  const description = cardText(filming.card);
  return [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    `PRODID:-//Rackside//Handover//${language.toUpperCase()}`,
    'CALSCALE:GREGORIAN',
    'BEGIN:VEVENT',
    `UID:${uidOf(review)}`,
    `DTSTAMP:${utcValue(stamp)}`,
    `DTSTART;VALUE=DATE:${dateValue(date)}`,
    `SEQUENCE:${sequence}`,
    `SUMMARY;LANGUAGE=${language}:${textValue(summary)}`,
    `DESCRIPTION;LANGUAGE=${language}:${textValue(description)}`,
    'TRANSP:TRANSPARENT',
    ...reminder(reminderHours, summary),
    'END:VEVENT',
    'END:VCALENDAR',
  ]
    .map(contentLine)
    .join('');
}
