import { type Inline, joined, text } from '../document/document.ts';
import { tidy, upperFirst } from '../document/words.ts';
import type { Language } from '../language/language.ts';
import type { SeenReps, Sighting } from './letterPlan.ts';
import { type Naming, shownMoments } from './sayWhere.ts';
import type { Speaker } from './speaker.ts';

type Patterns = { readonly anywhere: RegExp; readonly beginning: RegExp };

/** How a note names reps in a language: by their numbers anywhere, and by numbers or as all of them at its beginning. */
function patternsOf(words: { rep: string; between: string; of: string; every: string }): Patterns {
  const number = String.raw`\d+(?!\d|[:.,]\d)`;
  const numbers = String.raw`${number}(?:(?:\s*,\s*|\s+(?:${words.between})\s+|\s*[-–]\s*)${number})*`;
  const some = String.raw`(?:${words.rep})\s+(${numbers})`;
  return {
    anywhere: new RegExp(String.raw`\b${some}`, 'giu'),
    beginning: new RegExp(
      String.raw`^(?:in\s+)?(?:${some}(?:\s+${words.of}\s+\d+)?|(?:${words.every}))(?=[\s:,])`,
      'iu',
    ),
  };
}

const patterns: Readonly<Record<Language, Patterns>> = {
  en: patternsOf({
    ...{ rep: 'reps?', between: 'and|to', of: 'of' },
    every: String.raw`(?:every|each|the)\s+rep|all\s+reps`,
  }),
  de: patternsOf({
    ...{ rep: 'wiederholung(?:en)?', between: 'und|bis', of: 'von' },
    every: String.raw`(?:jede|jeder|die)\s+wiederholung|alle\s+wiederholungen`,
  }),
};

/** "1 to 3 and 5" as 1, 2, 3, 5. */
function indicesOf(words: string): number[] {
  const runs = words.matchAll(/(\d+)(?:(?:\s+(?:to|bis)\s+|\s*[-–]\s*)(\d+))?/gu);
  return [...runs].flatMap(([, from, to]) => {
    const [first, last] = [Number(from), Number(to ?? from)];
    return Array.from({ length: Math.max(0, Math.min(last - first + 1, 500)) }, (_, i) => first + i);
  });
}

/** How a note that begins with the reps it speaks of, in the letter's language, names them; null for any other note. */
export function repsBegun(note: string, language: Language): string | null {
  const [lead] = patterns[language].beginning.exec(note) ?? [];
  return lead ?? null;
}

/** Whether a note that begins with its reps names all that were seen, so that nobody has to name them again. */
function namesAll(note: string, lead: string, seen: SeenReps, language: Language): boolean {
  if (!/\d/u.test(lead)) return seen.kind !== 'some';
  const named = new Set([...note.matchAll(patterns[language].anywhere)].flatMap(([, words = '']) => indicesOf(words)));
  switch (seen.kind) {
    case 'set':
      return false;
    case 'every':
      return Array.from({ length: seen.of }, (_, i) => i + 1).every((rep) => named.has(rep));
    case 'some':
      return seen.reps.every((rep) => named.has(rep));
  }
}

function placesBehind(note: string, lead: string, places: readonly Inline[], speaker: Speaker): Inline[] {
  const rest = text(note.slice(lead.length));
  const reps = upperFirst(lead);
  if (places.length === 0) return joined([text(reps), rest]);
  return joined([...speaker.sayAround('momentsOfReps', { times: places }, { reps }), rest]);
}

const namesOf = ({ exercise, clipName }: Sighting, naming: Naming, speaker: Speaker): string[] => [
  ...(naming === 'none' ? [] : [speaker.within(exercise)]),
  ...(clipName === null ? [] : [tidy(clipName)]),
];

/**
 * A note with the one place it was seen in, where it names the reps itself: "Rep 5 (0:24) leaves its path". Null where the place has
 * to be said before it.
 */
export function sayOwnReps(note: string, sighting: Sighting, speaker: Speaker, naming: Naming): Inline[] | null {
  const lead = repsBegun(note, speaker.language);
  if (lead === null || sighting.alsoIn !== undefined || !namesAll(note, lead, sighting.reps, speaker.language))
    return null;
  const moments = shownMoments(sighting, speaker);
  if (moments.length > 1 && indicesOf(lead).length < moments.length) return null;
  const names = namesOf(sighting, naming, speaker).join(', ');
  const between = names !== '' && moments.length > 0 ? ', ' : '';
  return placesBehind(note, lead, joined([text(`${names}${between}`), ...moments]).filter(notEmpty), speaker);
}

/** A note on one of several places: which one is said behind the reps it begins with. */
export function sayWithPlace(note: string, sighting: Sighting | undefined, speaker: Speaker, naming: Naming): Inline[] {
  const lead = repsBegun(note, speaker.language);
  if (lead === null || sighting === undefined) return [text(upperFirst(note))];
  const names = namesOf(sighting, naming, speaker).join(', ');
  return placesBehind(note, lead, names === '' ? [] : [text(names)], speaker);
}

const notEmpty = (inline: Inline): boolean => inline.text !== '';
