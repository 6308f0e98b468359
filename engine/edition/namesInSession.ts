import type { Catalogue } from '../exercises/catalogue.ts';
import type { LetterEdit } from '../letter/edits.ts';
import type { OwnParagraph } from '../letter/shape.ts';
import { nameFinder } from '../names/findName.ts';
import { isSameName } from '../names/folding.ts';
import { type NameDecision, type NamePlace, namePlaceOf, placeId, withoutName } from '../names/hideName.ts';
import { type NameMode, shownName } from '../names/shownName.ts';
import type { Review } from '../review/review.ts';
import { textKindOf, type Written, withWritten, writtenKey } from './written.ts';

/** A place that may hold the trainee's name, on which nobody has decided yet. */
export type NameDoubt = NamePlace & Written;

/** What is told of a session's texts, and what nobody has decided on. */
export type ToldTexts = {
  readonly review: Review;
  readonly edits: readonly LetterEdit[];
  readonly own: readonly OwnParagraph[];
  readonly doubts: readonly NameDoubt[];
  /** Hides the name in any other text, such as why a clip could not be handed over; what was drawn is told as on the clip. */
  readonly hide: (text: string) => string;
};

type Texts = {
  readonly review: Review;
  readonly edits: readonly LetterEdit[];
  readonly own: readonly OwnParagraph[];
};

/**
 * A session's texts as they may leave the desk: the trainee named as they want it wherever words stand, and no clip says where on a disk
 * its footage is. What may be the name or another word is hidden until a person has said that it is no name, and is told among the doubts
 * until they have said either.
 */
export function toldTexts(
  { review, edits, own }: Texts,
  mode: NameMode,
  catalogue: Catalogue,
  decisions: readonly NameDecision[],
): ToldTexts {
  const { trainee, coach } = review;
  const find = nameFinder(trainee.name, mode);
  const decided = new Map(decisions.map((decision) => [placeId(decision), decision.is]));
  const doubts: NameDoubt[] = [];
  const library = mode === 'full' ? new Set<string>() : textsOf(catalogue);
  const drawn = new Map<string, string>();
  const hide = (text: string): string => drawn.get(text) ?? withoutName(text, find(text, 'fileName'));
  const say = (text: string, where: Written): string => {
    if (mode === 'full' || text === '' || (where.kind === 'cue' && library.has(text))) return text;
    const told = withoutName(text, find(text, textKindOf(where)), (sighting) => {
      const place = namePlaceOf(writtenKey(where), text, sighting);
      const is = decided.get(placeId(place));
      if (is === undefined) doubts.push({ ...where, ...place });
      return is === 'noName';
    });
    if (where.kind === 'drawnText') drawn.set(text, told);
    return told;
  };
  const inLetter = <T extends { readonly words: string }>(one: T, paragraph: string): T => ({
    ...one,
    words: say(one.words, { kind: 'letter', of: paragraph }),
  });
  const told = withWritten(review, say);
  const isOwn = coach !== undefined && isSameName(coach, trainee.name);
  return {
    review: {
      ...told,
      ...(isOwn && { coach: shownName(coach, mode) }),
      trainee: { ...trainee, name: shownName(trainee.name, mode) },
      entries: told.entries.map((entry) => ({ ...entry, clips: entry.clips.map(({ path: _, ...clip }) => clip) })),
    },
    edits: edits.map((edit) => inLetter(edit, edit.paragraph)),
    own: own.map((one) => inLetter(one, one.id)),
    doubts,
    hide,
  };
}

const known = new WeakMap<Catalogue, ReadonlySet<string>>();

/** Every text of the judging data: what is one of them word for word was written by nobody. */
function textsOf(catalogue: Catalogue): ReadonlySet<string> {
  const texts =
    known.get(catalogue) ?? new Set(stringsIn([catalogue.exercises, catalogue.rubric, catalogue.translations]));
  known.set(catalogue, texts);
  return texts;
}

const stringsIn = (value: unknown): string[] => {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(stringsIn) : [];
};
