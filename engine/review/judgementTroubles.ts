import type { Exercise } from '../exercises/exercise.ts';
import type { CriterionId, Rubric } from '../rubric/rubric.ts';
import { repIndices } from './parts.ts';
import type { Clip, FlagAsRead, Reps, Tick } from './review.ts';
import { quote, type Trouble } from './trouble.ts';

/** Where a flag or tick stands in the review, and what it may name. */
export type JudgementSite = {
  readonly path: string;
  readonly exercise: Exercise;
  readonly rubric: Rubric;
  /** The clips of its entry by id. */
  readonly clips: ReadonlyMap<string, Clip>;
};

function countOfReps(clip: Clip): string {
  if (clip.reps.length === 0) return 'has no reps marked: mark them or write "set"';
  return clip.reps.length === 1 ? 'has 1 rep' : `has ${clip.reps.length} reps`;
}

function* clipAndRepsTroubles(clipId: string, reps: Reps, at: JudgementSite): Generator<Trouble> {
  const clip = at.clips.get(clipId);
  if (clip === undefined) {
    yield { path: at.path, what: `names the clip ${quote(clipId)}, which its entry doesn't hold: correct it` };
    return;
  }
  if (reps === 'set') return;
  const marked = new Set(repIndices(clip));
  for (const rep of reps) {
    if (!marked.has(rep))
      yield { path: at.path, what: `names rep ${rep}, but clip ${quote(clipId)} ${countOfReps(clip)}` };
  }
}

function* criterionTroubles(criterion: CriterionId, at: JudgementSite): Generator<Trouble> {
  if (!at.rubric.criteria.some((known) => known.id === criterion)) {
    const known = at.rubric.criteria.map((one) => one.id).join(', ');
    yield { path: at.path, what: `names the criterion ${quote(criterion)}, which the rubric lacks: use ${known}` };
    return;
  }
  if (!at.exercise.criteria.some((own) => own.id === criterion)) {
    const judged = at.exercise.criteria.map((one) => one.id).join(', ');
    yield {
      path: at.path,
      what: `names the criterion ${quote(criterion)}, which this exercise is not judged by: use ${judged}`,
    };
  }
}

/** What a flag names that isn't there: criterion, fault, clip, reps. */
export function* flagTroubles(flag: FlagAsRead, at: JudgementSite): Generator<Trouble> {
  yield* criterionTroubles(flag.criterion, at);
  const { fault } = flag;
  if (fault !== null) {
    const known = at.exercise.faults.filter((one) => one.criterion === flag.criterion);
    if (!known.some((one) => one.id === fault)) {
      yield {
        path: at.path,
        what: `names the fault ${quote(fault)}, which this exercise doesn't know for ${flag.criterion.slice(0, 20)}: correct it or leave it out`,
      };
    }
  }
  yield* clipAndRepsTroubles(flag.clip, flag.reps, at);
}

/** What a tick names that isn't there: criterion, clip, reps. */
export function* tickTroubles(tick: Tick, at: JudgementSite): Generator<Trouble> {
  yield* criterionTroubles(tick.criterion, at);
  yield* clipAndRepsTroubles(tick.clip, tick.reps, at);
}
