import { writeBreakdown } from '../breakdown/writeBreakdown.ts';
import { type FilmingDate, filmingDate } from '../calendar/filmingDate.ts';
import type { Block, RacksideDocument } from '../document/document.ts';
import { type Catalogue, translated } from '../exercises/catalogue.ts';
import { type FilmAsks, filmAsks, filmingCard } from '../film/filmingCard.ts';
import type { SessionGrade } from '../grading/grade.ts';
import { gradeSession } from '../grading/gradeSession.ts';
import { applyEdits, type EditedLetter, type LetterEdit } from '../letter/edits.ts';
import { blocksOf, type Letter, type LetterStyle, type Stills } from '../letter/letter.ts';
import type { LetterPlan } from '../letter/letterPlan.ts';
import { planLetter } from '../letter/planLetter.ts';
import { recounted } from '../letter/recounted.ts';
import { groundsOf, type LetterShape, partsOf, plannedShape } from '../letter/shape.ts';
import { speakerOf } from '../letter/speaker.ts';
import { writeFilm } from '../letter/writeAdvice.ts';
import { writeLetter } from '../letter/writeLetter.ts';
import type { SetMeasurement } from '../motion/measurement.ts';
import type { NameDecision } from '../names/hideName.ts';
import type { NameMode } from '../names/shownName.ts';
import type { TrainedSession } from '../programme/week.ts';
import type { Review } from '../review/review.ts';
import type { SheetLength } from '../sheet/sheetExtras.ts';
import { sheetJson } from '../sheet/sheetJson.ts';
import { writeSheet } from '../sheet/writeSheet.ts';
import { type NameDoubt, toldTexts } from './namesInSession.ts';
import { noticesOf, type SessionNotices, withNotices } from './notices.ts';
import { type Footage, translatedReview, withFacts } from './shownReview.ts';

/** What an edition is made from, as the desk keeps it. */
export type EditionSource = {
  /** With the trainee's full name, and cues as they were written. */
  readonly review: Review;
  /** The judging data of the review's rubric, in English, with its translations. */
  readonly catalogue: Catalogue;
  /** Its language is the language of every document. */
  readonly style: LetterStyle;
  readonly names: NameMode;
  /** What the coach said of places that may hold the trainee's name. */
  readonly nameDecisions?: readonly NameDecision[];
  /** The coach's own words in the letter. */
  readonly edits?: readonly LetterEdit[];
  /** What the coach left out of the letter, added to it and put in another order. */
  readonly shape?: LetterShape;
  /** The trainee's sessions before, oldest first, under the same rubric. */
  readonly earlier?: readonly Review[];
  /** What was trained in the week before; without it, what `earlier` says. */
  readonly weekBefore?: readonly TrainedSession[];
  /** What was measured, by the clip's id. */
  readonly measures?: ReadonlyMap<string, SetMeasurement>;
};

/**
 * One session as it leaves the desk: in one language, the trainee named as they want it. Everything that is written of
 * it is made from the same grade and the same plan. Each part is made when it is first asked for, and once.
 */
export type Edition = {
  readonly source: EditionSource;
  /** Names and cues as they are told. */
  readonly review: Review;
  /** The judging data in the language of the edition. */
  readonly catalogue: Catalogue;
  readonly names: NameMode;
  /** Places that may hold the hidden name, on which nobody has decided: nothing leaves the desk while there are any. */
  readonly nameDoubts: readonly NameDoubt[];
  /** Hides the name in a text that is no part of the session. */
  readonly hideName: (text: string) => string;
  readonly style: LetterStyle;
  readonly earlier: readonly Review[];
  readonly measures: ReadonlyMap<string, SetMeasurement>;
  readonly grade: () => SessionGrade;
  readonly plan: () => LetterPlan;
  /** The letter in sections, the coach's words in it; with `stills`, pictures beside its priorities. */
  readonly letter: (stills?: Stills) => EditedLetter;
  /** The sheet as a document. The short one tells no measures and shows no stills. */
  readonly sheet: (length: SheetLength, stills?: Stills) => RacksideDocument;
  /** The sheet as a JSON file. */
  readonly sheetJson: (stills?: Stills) => string;
  readonly breakdown: () => RacksideDocument;
  /** What to film next, in the letter's words and the coach's; also where the letter is too short to say so. */
  readonly filmAsks: () => FilmAsks;
  /** What to film next, and how to film it. */
  readonly filmingCard: () => RacksideDocument;
  /** The day to film next, as a calendar file with the text of `filmingCard`. */
  readonly filmingDate: (when: FilmingDay) => string;
  /** What stands on top and at the end of everything else that is written of it. */
  readonly notices: () => SessionNotices;
};

/** The day to film next, and what a calendar has to know of it. */
export type FilmingDay = Omit<FilmingDate, 'card' | 'exerciseIds'>;

const noStills: Stills = new Map();

const fileNames = (stills: Stills): ReadonlyMap<string, string> =>
  new Map([...stills].map(([flagId, { source }]) => [flagId, source]));

/** The edition of a session. Depends on nothing but its source; nothing is computed until it is asked for. */
export const editionOf = (source: EditionSource): Edition => assemble(source, {});

/**
 * An edition that also knows what its clips told when they were opened: their facts, without which a flag's frame is no
 * time, and their measures. Where they told nothing new, the edition itself; its grade, and where times stay its letter, are not made again.
 */
export function withFootage(edition: Edition, { facts, measures }: Footage): Edition {
  const { source, grade, plan, letter } = edition;
  const review = withFacts(source.review, facts);
  const sameTimes = review === source.review;
  if (sameTimes && measures.size === 0) return edition;
  const all = new Map([...edition.measures, ...measures]);
  return assemble({ ...source, review, measures: all }, sameTimes ? { grade, plan, letter } : { grade });
}

/**
 * The same edition with its moments told by other clocks: `retime` moves them, and nothing else; `measures` are told by those clocks
 * too. It is graded as before.
 */
export function withClocks(
  edition: Edition,
  retime: (review: Review) => Review,
  measures: Edition['measures'] = edition.measures,
): Edition {
  const { source, grade } = edition;
  return assemble({ ...source, review: retime(source.review), measures }, { grade });
}

/** `made` holds what another edition of the same judgement has made already. */
function assemble(source: EditionSource, made: Partial<Pick<Edition, 'grade' | 'plan' | 'letter'>>): Edition {
  const {
    style,
    names,
    nameDecisions = [],
    edits = [],
    shape = plannedShape,
    earlier = [],
    weekBefore = earlier,
    measures = new Map(),
  } = source;
  const catalogue = translated(source.catalogue, style.language);
  const texts = { review: source.review, edits, own: shape.own };
  const told = toldTexts(texts, names, source.catalogue, nameDecisions);
  const review = translatedReview(told.review, catalogue);
  const exercises = review.entries.map(({ exercise }) => exercise);
  const coachsWords = told.edits;
  const coachsShape = { ...shape, own: told.own };

  const grade = made.grade ?? once(() => gradeSession(review, catalogue, weekBefore));
  const plan = made.plan ?? once(() => planLetter(review, grade(), catalogue, earlier));
  const letterWith = oncePer((stills: Stills) => {
    const write = (of: LetterPlan) => writeLetter(of, style, stills);
    const shaped = (written: Letter) => applyEdits(written, coachsWords, coachsShape, groundsOf(plan()));
    const written = write(plan());
    const first = shaped(written);
    const counted = recounted(written, plan(), first.document, write);
    return counted === written ? first : shaped(counted);
  });
  const letter = made.letter ?? ((stills = noStills) => letterWith(stills));
  const speaker = speakerOf(style.language, review.voice, style.tone);
  const notices = once(() => noticesOf(plan(), speaker));
  const asks = once(() => {
    const planned = { ...letter().letter, sections: [{ id: 'film', blocks: writeFilm(plan(), speaker) }] } as const;
    const asked = new Set(partsOf(planned).map(({ id }) => id));
    const said = new Set(blocksOf(letter().letter, 'film'));
    const isAsk = (block: Block): boolean => said.has(block) || asked.has(block.id.replace(/-break-\d+$/, ''));
    const blocks = letter().document.blocks.filter(isAsk);
    // A letter that is too short to ask, or that sends for help, has no order of what it would ask either.
    if (blocks.length === 0) {
      return filmAsks(applyEdits(planned, coachsWords, { ...plannedShape, leftOut: shape.leftOut }).letter);
    }
    const holdsBack = (block: Block): boolean => block.kind === 'paragraph' && block.fixed === true;
    const inOrder = [...blocks.filter(holdsBack), ...blocks.filter((block) => !holdsBack(block))];
    return filmAsks({ ...letter().letter, sections: [{ id: 'film', blocks: inOrder }] });
  });
  const mayFilm = once((): readonly string[] | null => {
    const { pain } = plan();
    if (pain?.step !== 'stop') return exercises;
    const stopped = new Set(pain.held.map(({ exerciseId }) => exerciseId));
    return pain.holdsAll ? null : exercises.filter((id) => !stopped.has(id));
  });
  const card = once(() => {
    const asked = new Set(plan().film.flatMap((request) => ('exerciseId' in request ? [request.exerciseId] : [])));
    const missing = exercises.filter((id) => asked.has(id));
    const painful = new Set(plan().pain?.held.map(({ exerciseId }) => exerciseId));
    const exerciseIds = missing.length === 0 ? exercises.filter((id) => !painful.has(id)) : missing;
    const effort = mayFilm() === null ? null : plan().filmEffort;
    const { date } = review.session;
    return withNotices(filmingCard({ exerciseIds, date, effort, asks: asks() }, catalogue), notices());
  });

  return {
    ...{ source, review, catalogue, names, style, earlier, measures, grade, plan },
    ...{ nameDoubts: told.doubts, hideName: told.hide },
    letter,
    sheet: (length, stills = noStills) =>
      withNotices(
        writeSheet(
          review,
          grade(),
          catalogue,
          length === 'short' ? { length } : { length, measures, stills: fileNames(stills) },
        ),
        notices(),
      ),
    sheetJson: (stills = noStills) => sheetJson(review, grade(), catalogue, { measures, stills: fileNames(stills) }),
    breakdown: () => withNotices(writeBreakdown(review, grade(), catalogue), notices()),
    filmAsks: asks,
    filmingCard: card,
    filmingDate: (when) => filmingDate(review, catalogue, { ...when, card: card(), exerciseIds: mayFilm() }),
    notices,
  };
}

/** A value that is made when it is first asked for, and kept. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** A value for each of some objects, made when it is first asked for and kept as long as the object lives. */
export function oncePer<Key extends object, T>(make: (key: Key) => T): (key: Key) => T {
  const made = new WeakMap<Key, { readonly value: T }>();
  return (key) => {
    const known = made.get(key) ?? { value: make(key) };
    made.set(key, known);
    return known.value;
  };
}
