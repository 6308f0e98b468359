import { tidy } from '../document/words.ts';
import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import type { SessionGrade } from '../grading/grade.ts';
import { compareSessions, type FaultChange } from '../progress/sessionsOverTime.ts';
import type { Review } from '../review/review.ts';
import { workOf } from '../review/work.ts';
import { criterionName, exerciseName, flagRows } from '../sheet/flagRows.ts';
import type { Change, EntryLine, Largest, LetterPlan, Overall, Priority } from './letterPlan.ts';
import { planCautions } from './planCautions.ts';
import { planFilm } from './planFilm.ts';
import { planKeeps } from './planKeeps.ts';
import { planPriorities } from './planPriorities.ts';

/** What gains most; stops are left out. */
function largestOf(review: Review, grade: SessionGrade, catalogue: Catalogue): Largest | null {
  const raise = grade.raises.find(({ gain, weight }) => gain > 0 && weight !== 'stop');
  if (raise === undefined || raise.kind === 'stops') return null;
  const { gain } = raise;
  if (raise.kind === 'finding') {
    const finding = grade.findings.find(({ id }) => id === raise.findingId);
    return finding === undefined ? null : { kind: 'finding', finding, gain };
  }
  const id = review.entries.find((each) => each.id === raise.entryId)?.exercise ?? '';
  const named = findExercise(catalogue, id)?.faults.find((each) => each.id === raise.fault);
  const fault = named?.name ?? criterionName(catalogue, raise.criterion);
  return { kind: 'fault', fault, exercise: exerciseName(catalogue, id), gain };
}

function remarkedIn({ entries }: Review): Overall['remarked'] {
  const found = new Set(entries.flatMap(({ flags }) => flags.map(({ weight }) => weight)));
  found.delete('keep');
  if (found.has('stop')) return 'stop';
  return found.size > 0 ? 'something' : 'nothing';
}

function overallOf(review: Review, grade: SessionGrade, catalogue: Catalogue): Overall {
  return {
    state: grade.state,
    override: grade.override,
    technique: grade.technique,
    programme: grade.programme,
    programmeCost: grade.programmeCost,
    cappedByStop: grade.cappedByStop,
    range: grade.range,
    remarked: remarkedIn(review),
    largest: largestOf(review, grade, catalogue),
  };
}

/**
 * Decides what the letter says: deterministic, from the review, its grade and the catalogue. `grade` is the grade of
 * this review under this catalogue's rubric; `earlier` are the trainee's sessions before, oldest first.
 */
export function planLetter(
  review: Review,
  grade: SessionGrade,
  catalogue: Catalogue,
  earlier: readonly Review[] = [],
): LetterPlan {
  const rows = flagRows(review, catalogue);
  const asked = planPriorities({ review, grade, catalogue, earlier }, rows);
  const clips = review.entries.flatMap((entry) => entry.clips);
  return {
    voice: review.voice,
    units: review.trainee.units,
    coach: tidy(review.coach ?? ''),
    trainee: tidy(review.trainee.name),
    date: review.session.date,
    clipNames: clips.map((clip) => tidy(clip.name)),
    reps: clips.reduce((sum, clip) => sum + clip.reps.length, 0),
    overall: overallOf(review, grade, catalogue),
    ...asked,
    changes: planChanges(review, earlier, catalogue),
    choice: planChoice(asked.priorities, asked.stops.length),
    painNote: tidy(review.session.painNote),
    keeps: planKeeps(review, grade, catalogue, rows),
    entries: planEntries(review, grade, catalogue),
    findings: grade.findings,
    film: planFilm(review, grade, catalogue),
    cautions: planCautions(review, catalogue),
    rubric: { name: catalogue.rubric.name, version: grade.rubric.version },
    stopCap: catalogue.rubric.stopCap,
  };
}

/**
 * One choice for the trainee, where nothing is unsafe: which of several things to begin with, else which of two cues. Choosing
 * is offered because it is pleasant and harmless, not for an effect (McKay et al. 2022, Meta-Psychology: g 0.11).
 */
function planChoice(priorities: readonly Priority[], stops: number): LetterPlan['choice'] {
  const [first, second] = priorities;
  if (first === undefined || stops > 0) return null;
  if (second !== undefined) return { kind: 'order' };
  const { fault, cue } = first;
  if (fault === null) return null;
  return { kind: 'cue', other: cue === fault.cue.body ? fault.cue.outcome : fault.cue.body };
}

/** Good news first, then what came back. New faults are priorities, and what stayed the same is left out. */
const order = ['gone', 'better', 'back', 'worse'] as const;

const isTold = (kind: FaultChange['kind']): kind is Change['kind'] => order.some((known) => known === kind);

/** What the letter says of last time, against the trainee's own earlier sessions only. */
function planChanges(review: Review, earlier: readonly Review[], catalogue: Catalogue): Change[] {
  return compareSessions(review, earlier, catalogue)
    .flatMap(({ kind, exercise, fault, before, now }): Change[] => {
      const name = catalogue.exercises.find(({ id }) => id === exercise)?.faults.find(({ id }) => id === fault)?.name;
      return name === undefined || !isTold(kind)
        ? []
        : [{ kind, fault: name, exercise: exerciseName(catalogue, exercise), before, now }];
    })
    .sort((a, b) => order.indexOf(a.kind) - order.indexOf(b.kind));
}

/** A line for each exercise: what was done and how it was graded. */
function planEntries(review: Review, grade: SessionGrade, catalogue: Catalogue): EntryLine[] {
  return review.entries.flatMap((entry) => {
    const graded = grade.entries.find((each) => each.entryId === entry.id);
    if (graded === undefined) return [];
    return {
      entryId: entry.id,
      exercise: exerciseName(catalogue, entry.exercise),
      work: workOf(entry, findExercise(catalogue, entry.exercise)),
      clipNames: entry.clips.map((clip) => clip.name),
      state: graded.state,
      override: graded.override,
      coverage: graded.coverage,
      cappedByStop: graded.cappedByStop,
    };
  });
}
