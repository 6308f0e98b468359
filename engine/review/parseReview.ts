import * as v from 'valibot';
import type { Catalogue } from '../exercises/catalogue.ts';
import { findContradictions, nameFlags } from './contradictions.ts';
import { inNewNames, pathAsRead } from './oldNames.ts';
import { plainReps } from './parts.ts';
import { findHostileValue } from './plainData.ts';
import { type Review, type ReviewAsRead, reviewSchema } from './review.ts';
import { troubleOfIssue } from './shapeTrouble.ts';
import type { Trouble } from './trouble.ts';

export type ParsedReview =
  | { readonly ok: true; readonly review: Review }
  /** One plain sentence: where, what is wrong there, what to do. */
  | { readonly ok: false; readonly sentence: string };

function refuse({ path, what }: Trouble, input: unknown): ParsedReview {
  const asRead = pathAsRead(path, input);
  return { ok: false, sentence: `${/^[a-z]/.test(asRead) ? asRead : 'The review'} ${what}.` };
}

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
 * every name it uses known to the catalogue. Files of every version are read (`oldNames.ts`). Gives the review whole, with an id on every flag and each
 * rep listed once; or one sentence about the first thing that is wrong, quoting at most 60 characters of the input.
 * `versions` are the rubric versions to be had, for the sentence on one that isn't.
 */
export function parseReview(
  input: unknown,
  catalogue: Catalogue,
  versions: readonly number[] = [catalogue.rubric.version],
): ParsedReview {
  const hostile = findHostileValue(input);
  if (hostile !== null) return refuse(hostile, input);
  const parsed = v.safeParse(reviewSchema, inNewNames(input), { abortEarly: true });
  if (!parsed.success) return refuse(troubleOfIssue(parsed.issues[0]), input);
  for (const trouble of findContradictions(parsed.output, catalogue, versions)) return refuse(trouble, input);
  return { ok: true, review: nameFlags(withPlainReps(parsed.output)) };
}

const asking = v.object({ rubric: v.object({ version: v.pipe(v.number(), v.integer(), v.minValue(1)) }) });

/** The rubric version that data which claims to be a review asks for; undefined when it names none. */
export function rubricVersionOf(input: unknown): number | undefined {
  const parsed = v.safeParse(asking, input);
  return parsed.success ? parsed.output.rubric.version : undefined;
}
