import type { Catalogue } from '../exercises/catalogue.ts';
import type { RepScore } from '../grading/grade.ts';
import { gradeSession } from '../grading/gradeSession.ts';
import type { Clip, Review } from '../review/review.ts';
import { type CriterionId, type Severity, severities } from '../rubric/rubric.ts';
import { pairReps, type SharedRep } from './pairReps.ts';

/** What a reviewer said of one criterion on one rep: the heaviest remark, `keep` for praise or a tick. */
export type Verdict = { readonly severity: Severity; readonly score: number };

/** One criterion on one rep; `rep` is null for a set without marked reps. */
export type CriterionOnRep = {
  readonly entryId: string;
  readonly exercise: string;
  readonly clip: string;
  /** As the first review that marked it numbers it. */
  readonly rep: number | null;
  readonly criterion: CriterionId;
};

/** Each reviewer's verdict on one moment; null where they did not look. */
export type Moment = CriterionOnRep & {
  readonly verdicts: readonly (Verdict | null)[];
  /** The rep as each reviewer numbers it; null where they did not mark it. */
  readonly numbers: SharedRep;
};

/** A rep that some reviewers marked, and others of the same clip did not. */
export type UnpairedRep = {
  readonly entryId: string;
  readonly clip: string;
  /** As each reviewer numbers it; null where they did not mark it. */
  readonly numbers: SharedRep;
};

export type JudgedTogether = { readonly moments: readonly Moment[]; readonly unpairedReps: readonly UnpairedRep[] };

type NamedReps = { readonly entryId: string; readonly clip: string; readonly reps: readonly SharedRep[] };

const named = (entryId: string, clip: string, rep: number | null): string => JSON.stringify([entryId, clip, rep]);

/** The reps of every clip that two reviews or more hold, paired by their time. */
function repsOfClips(reviews: readonly Review[]): readonly NamedReps[] {
  const places = new Map<string, { entryId: string; clip: string; clips: (Clip | null)[] }>();
  for (const [reviewer, { entries }] of reviews.entries()) {
    for (const entry of entries) {
      for (const clip of entry.clips) {
        const key = named(entry.id, clip.id, null);
        const place = places.get(key) ?? { entryId: entry.id, clip: clip.id, clips: reviews.map(() => null) };
        places.set(key, place);
        place.clips[reviewer] = clip;
      }
    }
  }
  return [...places.values()].map(({ entryId, clip, clips }) => {
    const held = clips.flatMap((one, reviewer) => (one === null ? [] : [{ one, reviewer }]));
    const reps = pairReps(held.map(({ one }) => one)).map((numbers) =>
      clips.map((_, reviewer) => numbers[held.findIndex((holder) => holder.reviewer === reviewer)] ?? null),
    );
    return { entryId, clip, reps };
  });
}

/** Whether all reviewers who have the clip marked the rep. */
function isPaired({ entryId, clip }: NamedReps, numbers: SharedRep, reviews: readonly Review[]): boolean {
  return reviews.every(({ entries }, reviewer) => {
    const holds = entries.some((entry) => entry.id === entryId && entry.clips.some((one) => one.id === clip));
    return !holds || numbers[reviewer] !== null;
  });
}

/** The reps of each clip by the name that one reviewer gives them. */
const byOwnName = (clips: readonly NamedReps[], reviewer: number): ReadonlyMap<string, SharedRep> =>
  new Map(
    clips.flatMap(({ entryId, clip, reps }) =>
      reps.map((numbers) => [named(entryId, clip, numbers[reviewer] ?? null), numbers] as const),
    ),
  );

/** One criterion on one rep, as one reviewer judged it and numbers it. */
type Judged = CriterionOnRep & { readonly verdict: Verdict };

function judgedIn(review: Review, catalogue: Catalogue): readonly Judged[] {
  return gradeSession(review, catalogue).entries.flatMap(({ entryId, exercise, criteria }) =>
    criteria
      .filter(({ lookedAt }) => lookedAt)
      .flatMap(({ criterion, reps }) =>
        reps.map((of) => ({ ...{ entryId, exercise, clip: of.clip, rep: of.rep, criterion }, verdict: verdictOf(of) })),
      ),
  );
}

/**
 * What any of the reviewers looked at, rep by rep and criterion by criterion. Reps go together by their time in the clip,
 * whatever their numbers.
 * @param reviews all under the catalogue's rubric, entries and clips named alike (`alignReviews`)
 */
export function judgedTogether(reviews: readonly Review[], catalogue: Catalogue): JudgedTogether {
  const clips = repsOfClips(reviews);
  const nobody = reviews.map(() => null);
  const moments = new Map<string, Moment & { readonly verdicts: (Verdict | null)[] }>();
  for (const [reviewer, review] of reviews.entries()) {
    const shared = byOwnName(clips, reviewer);
    for (const { verdict, ...where } of judgedIn(review, catalogue)) {
      const own = where.rep === null ? undefined : shared.get(named(where.entryId, where.clip, where.rep));
      const numbers = own ?? nobody;
      const rep = numbers.find((number) => number !== null) ?? null;
      const key = JSON.stringify([where.entryId, where.clip, numbers, where.criterion]);
      const known = moments.get(key) ?? { ...where, rep, numbers, verdicts: [...nobody] };
      moments.set(key, known);
      known.verdicts[reviewer] = verdict;
    }
  }
  return {
    moments: [...moments.values()],
    unpairedReps: clips.flatMap((of) =>
      of.reps
        .filter((numbers) => !isPaired(of, numbers, reviews))
        .map((numbers) => ({ entryId: of.entryId, clip: of.clip, numbers })),
    ),
  };
}

function verdictOf(rep: RepScore): Verdict {
  const heaviest = Math.max(0, ...rep.flags.map((flag) => severities.indexOf(flag.severity)));
  return { severity: severities[heaviest] ?? 'keep', score: rep.score };
}
