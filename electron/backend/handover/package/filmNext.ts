import type { Block, RacksideDocument } from '../../../../engine/document/document.ts';
import { plainText, text } from '../../../../engine/document/inlines.ts';
import type { Catalogue } from '../../../../engine/exercises/catalogue.ts';
import { filmingCard } from '../../../../engine/film/filmingCard.ts';
import type { FilmRequest } from '../../../../engine/letter/letterPlan.ts';
import type { Review } from '../../../../engine/review/review.ts';
import { exerciseName } from '../../../../engine/sheet/flagRows.ts';

/** What a letter asks to be filmed next: its heading, and a sentence or two each. */
export type FilmAsks = { readonly title: string; readonly asks: readonly string[] };

const isFilmHeading = (block: Block): boolean => block.kind === 'heading' && block.id === 'film';

/** The asks as the letter has them, the coach's words in place; none where it doesn't ask. */
export function filmAsks({ blocks }: RacksideDocument): FilmAsks {
  const start = blocks.findIndex(isFilmHeading);
  const heading = blocks[start];
  if (heading?.kind !== 'heading') return { title: '', asks: [] };
  const after = blocks.slice(start + 1);
  const asked = after.filter((block) => block.kind === 'paragraph' && block.id.startsWith('film'));
  return {
    title: heading.text,
    asks: asked.flatMap((block) => (block.kind === 'paragraph' ? [plainText(block.inlines)] : [])),
  };
}

/** The filming card of a session: what was missing first, then how to film those exercises. */
export function cardOfMissing(
  review: Review,
  catalogue: Catalogue,
  { film, said }: { readonly film: readonly FilmRequest[]; readonly said: FilmAsks },
): RacksideDocument {
  const asked = new Set(film.flatMap((request) => ('exercise' in request ? [request.exercise] : [])));
  const all = review.entries.map(({ exercise }) => exercise);
  const missing = all.filter((id) => asked.has(exerciseName(catalogue, id)));
  const card = filmingCard(missing.length === 0 ? all : missing, catalogue, review.session.date);
  if (said.asks.length === 0) return card;
  const first: readonly Block[] = [
    { kind: 'heading', level: 2, id: 'asks', text: said.title },
    { kind: 'list', id: 'asked', ordered: false, items: said.asks.map((ask) => [text(ask)]) },
  ];
  return { ...card, blocks: [...first, ...card.blocks] };
}
