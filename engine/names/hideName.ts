import type { NameSighting } from './findName.ts';

/** A place that a person has to decide on: where it stands, and the words around it. */
export type NamePlace = {
  /** Which text of the session it is in (`placeKey`). */
  readonly place: string;
  readonly before: string;
  readonly word: string;
  readonly after: string;
};

/** What a person said of a place. */
export type NameDecision = NamePlace & { readonly is: 'name' | 'noName' };

const mostAround = 60;

/** A sighting with the words around it, which tell it from others also when something else of the text changes. */
export function namePlaceOf(
  place: string,
  text: string,
  { start, end }: Pick<NameSighting, 'start' | 'end'>,
): NamePlace {
  return {
    place,
    before: [...text.slice(0, start)].slice(-mostAround).join(''),
    word: text.slice(start, end),
    after: [...text.slice(end)].slice(0, mostAround).join(''),
  };
}

/** One key for a place, the same for the same words at the same place. */
export const placeId = ({ place, before, word, after }: NamePlace): string =>
  JSON.stringify([place, before, word, after]);

/** A text with what was sighted hidden, but for what a person knows to be no name. */
export function withoutName(
  text: string,
  sightings: readonly NameSighting[],
  isNoName: (sighting: NameSighting) => boolean = () => false,
): string {
  let told = '';
  let from = 0;
  for (const sighting of sightings) {
    const { start, end, is, instead } = sighting;
    if (is === 'maybe' && isNoName(sighting)) continue;
    told += text.slice(from, start) + instead;
    // "A.’s" tells an initial from the ending after it.
    if (instead.endsWith('.') && /^s(?![\p{L}\p{M}])/u.test(text.slice(end))) told += '’';
    // A sentence ends with one stop.
    from = instead.endsWith('.') && text[end] === '.' ? end + 1 : end;
  }
  return told + text.slice(from);
}
