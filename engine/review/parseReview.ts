import * as v from 'valibot';
import type { Catalogue } from '../exercises/catalogue.ts';
import { findContradictions, nameFlags } from './meaning.ts';
import { plainReps } from './parts.ts';
import { findHostileValue, type Trouble } from './plainData.ts';
import { type Review, reviewSchema } from './review.ts';
import type { ReviewAsRead } from './schemaOutput.ts';
import { troubleOfIssue } from './shapeTrouble.ts';

export type ParsedReview =
  | { readonly ok: true; readonly review: Review }
  /** One plain sentence: the place, what is wrong there, what to do. */
  | { readonly ok: false; readonly sentence: string };

const refuse = ({ place, what }: Trouble): ParsedReview => ({
  ok: false,
  sentence: `${/^[a-z]/.test(place) ? place : 'The review'} ${what}.`,
});

const withPlainReps = (review: ReviewAsRead): ReviewAsRead => ({
  ...review,
  entries: review.entries.map((entry) => ({
    ...entry,
    flags: entry.flags.map((flag) => ({ ...flag, reps: plainReps(flag.reps) })),
    ticks: entry.ticks.map((tick) => ({ ...tick, reps: plainReps(tick.reps) })),
  })),
});

/**
 * Checks data that claims to be a review, from any source: nothing hostile in it, the format's shape, and
 * every name it uses known to the catalogue. Gives the review whole, with an id on every flag and each
 * rep listed once; or one sentence about the first thing that is wrong, quoting at most 60 characters of the input.
 * `versions` are the rubric versions to be had, for the sentence on one that isn't.
 */
export function parseReview(
  input: unknown,
  catalogue: Catalogue,
  versions: readonly number[] = [catalogue.rubric.version],
): ParsedReview {
  const hostile = findHostileValue(input);
  if (hostile !== null) return refuse(hostile);
  const parsed = v.safeParse(reviewSchema, input, { abortEarly: true });
  if (!parsed.success) return refuse(troubleOfIssue(parsed.issues[0]));
  for (const trouble of findContradictions(parsed.output, catalogue, versions)) return refuse(trouble);
  return { ok: true, review: nameFlags(withPlainReps(parsed.output)) };
}

/** The longest review text that is read, in characters. */
const longestText = 50_000_000;

/** Reads the text of a review file. See `parseReview` for what is checked. */
export function readReview(text: string, catalogue: Catalogue): ParsedReview {
  if (text.length > longestText) {
    return refuse({ place: '', what: 'is a file far too large: check that it is the right one' });
  }
  let input: unknown;
  try {
    input = JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text);
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    return refuse({ place: '', what: 'is not JSON: check the file for a cut or a slip of the pen' });
  }
  return parseReview(input, catalogue);
}
