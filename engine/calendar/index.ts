/** Calendar: the next filming date as a file that calendars take in. */
export { type FilmingDate, filmingDate } from './filmingDate.ts';
