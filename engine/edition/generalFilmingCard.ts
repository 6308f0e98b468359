import { cautionsOfExercises } from '../cautions/cautionsDue.ts';
import type { RacksideDocument } from '../document/document.ts';
import type { Catalogue } from '../exercises/catalogue.ts';
import { filmingCard } from '../film/filmingCard.ts';
import { speakerOf } from '../letter/speaker.ts';
import { generalNotices, withNotices } from './notices.ts';

/**
 * How to film some exercises, for whoever reads it: nothing is known of them, so it asks for an easy set. It speaks the
 * language of the catalogue.
 */
export function generalFilmingCard(
  exerciseIds: readonly string[],
  catalogue: Catalogue,
  date: string,
): RacksideDocument {
  const speaker = speakerOf(catalogue.language ?? 'en', 'coach');
  const cautions = cautionsOfExercises(exerciseIds, catalogue);
  return withNotices(filmingCard({ exerciseIds, date, effort: 'easy' }, catalogue), generalNotices(cautions, speaker));
}
