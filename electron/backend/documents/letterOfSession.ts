import { translated } from '../../../engine/exercises/translated.ts';
import type { SessionGrade } from '../../../engine/grading/grade.ts';
import { gradeSession } from '../../../engine/grading/gradeSession.ts';
import { applyEdits, type EditedLetter } from '../../../engine/letter/edits.ts';
import { planLetter } from '../../../engine/letter/planLetter.ts';
import type { LetterStyle, Stills } from '../../../engine/letter/style.ts';
import { writeLetter } from '../../../engine/letter/writeLetter.ts';
import { reviewWithName } from '../../../engine/names/reviewWithName.ts';
import { type NameMode, nameHider } from '../../../engine/names/shownName.ts';
import type { Review } from '../../../engine/review/review.ts';
import { reviewUnder } from '../../../engine/review/reviewUnder.ts';
import { inItsWords } from '../../../engine/wording/inItsWords.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { listLetterEdits } from '../store/letterEdits.ts';
import { readReview } from '../store/readReview.ts';
import { findSession, listSessionsBefore } from '../store/sessions.ts';

/** Everything a session's letter is made of. */
export type SessionLetter = {
  readonly review: Review;
  readonly grade: SessionGrade;
  readonly style: LetterStyle;
  readonly letter: EditedLetter;
};

/** The trainee's sessions before, oldest first, read by the rubric of the session at hand. */
export function earlierReviews(context: Context, sessionId: string): Review[] {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  const to = context.catalogue(session.rubric_version);
  return listSessionsBefore(reading, session).map((each) =>
    reviewUnder(readReview(reading, each.id), { from: context.catalogue(each.rubric_version), to }),
  );
}

/** How a letter names its trainee, and the pictures beside it. */
export type LetterGuise = { readonly names?: NameMode; readonly stills?: Stills };

/** A session's letter in its style, the coach's own words in it. Throws `not-found`; `conflict` for a second look. */
export function letterOfSession(
  context: Context,
  sessionId: string,
  { names = 'full', stills }: LetterGuise = {},
): SessionLetter {
  const { reading } = context.library();
  const session = findSession(reading, sessionId);
  if (session.second_look_of !== null) {
    throw new ProblemError(
      'conflict',
      'A second look is the coach’s own check and has no letter, so none was made; take the letter of its first session.',
    );
  }
  const style: LetterStyle = {
    length: session.letter_length,
    tone: session.letter_tone,
    language: session.letter_language,
  };
  const own = context.catalogue(session.rubric_version);
  const catalogue = translated(own, style.language);
  const stored = readReview(reading, sessionId);
  const hide = nameHider(stored.trainee.name, names);
  const review = inItsWords(reviewWithName(stored, names), catalogue);
  const grade = gradeSession(review, catalogue);
  const plan = planLetter(review, grade, catalogue, earlierReviews(context, sessionId));
  const edits = listLetterEdits(reading, sessionId).map((edit) => ({ ...edit, words: hide(edit.words) }));
  const letter = applyEdits(writeLetter(plan, style, stills), edits);
  return { review, grade, style, letter };
}
