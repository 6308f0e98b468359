import { cautionsDue } from '../cautions/cautionsDue.ts';
import { filmEffort } from '../cautions/filmEffort.ts';
import { heldBack } from '../cautions/heldBack.ts';
import { tidy } from '../document/words.ts';
import { type Catalogue, type Caution, findExercise } from '../exercises/catalogue.ts';
import type { SessionGrade } from '../grading/grade.ts';
import { toldRange } from '../grading/toldRange.ts';
import { setsOf } from '../review/camerasOfSet.ts';
import { isJudging, judgementsIn } from '../review/parts.ts';
import type { Entry, Review } from '../review/review.ts';
import { workOf } from '../review/work.ts';
import { exerciseName, flagRows } from '../sheet/flagRows.ts';
import { gainWithout } from './gainWithout.ts';
import type { EntryLine, Largest, LetterPlan, Overall, PlannedPain } from './letterPlan.ts';
import { planChanges } from './planChanges.ts';
import { planFilm } from './planFilm.ts';
import { planKeeps } from './planKeeps.ts';
import { planPain } from './planPain.ts';
import { type PlannedPriorities, planPriorities } from './planPriorities.ts';
import { isHold } from './sightings.ts';

function remarkedIn({ entries }: Review): Overall['remarked'] {
  const found = new Set(entries.flatMap(({ flags }) => flags.map(({ severity }) => severity)));
  found.delete('keep');
  if (found.has('stop')) return 'stop';
  return found.size > 0 ? 'something' : 'nothing';
}

/**
 * The gain that may be told as points: none beside something unsafe or urgent, or while pain stops a lift; none of a lift or a
 * finding that pain holds back.
 */
function largestOf(
  { largest, stops, priorities }: PlannedPriorities,
  pain: PlannedPain | null,
  grade: SessionGrade,
  findings: LetterPlan['findings'],
): Largest | null {
  if (stops.length > 0 || pain?.step === 'stop' || priorities.some(({ urgent }) => urgent)) return null;
  const inPlan = Math.max(
    0,
    ...grade.raises.flatMap((raise) =>
      raise.kind === 'finding' && findings.some(({ id }) => id === raise.findingId) ? raise.gain : [],
    ),
  );
  if (largest !== null && largest.gain >= inPlan) {
    const { fault, criterionName, exercises, gain } = largest;
    return { kind: 'fault', fault: fault?.name ?? criterionName, exercises, gain };
  }
  return inPlan > 0 ? { kind: 'finding', gain: inPlan } : null;
}

/**
 * Decides what the letter says: deterministic, from the review, its grade and the catalogue. `grade` is the grade of
 * this review under this catalogue's rubric; `before` are the trainee's sessions before, oldest first. Plain notes
 * change nothing in it.
 */
export function planLetter(
  asWritten: Review,
  grade: SessionGrade,
  catalogue: Catalogue,
  before: readonly Review[] = [],
): LetterPlan {
  const earlier = before.map(judgementsIn);
  const review = judgementsIn(asWritten);
  const rows = flagRows(review, catalogue).filter(isJudging);
  const held = heldBack(review, catalogue);
  const pain = planPain(review, catalogue, held, grade.findings);
  const basis = { review, grade, catalogue, earlier, gainWithout: gainWithout(review, catalogue) };
  const priorities = planPriorities(basis, rows, held.entries);
  const { largest: _, ...asked } = priorities;
  const findings = grade.findings.filter((finding) => !held.holdsFinding(finding)).map(held.withoutMore);
  const lighter = new Set(asked.priorities.filter(({ urgent }) => urgent).flatMap(({ exercises }) => exercises));
  const clips = review.entries.flatMap((entry) => entry.clips);
  return {
    voice: review.voice,
    units: review.trainee.units,
    coach: tidy(review.coach ?? ''),
    trainee: tidy(review.trainee.name),
    date: review.session.date,
    clipNames: [...new Set(clips.map((clip) => tidy(clip.name)))],
    clips: clips.length,
    ...markedIn(review, catalogue),
    oneLift: new Set(review.entries.map(({ exercise }) => exercise)).size === 1,
    overall: {
      state: grade.state,
      override: grade.override,
      technique: grade.technique,
      programme: grade.programme,
      programmeCost: grade.programmeCost,
      cappedByStop: grade.cappedByStop,
      range: toldRange(grade),
      remarked: remarkedIn(review),
      largest: largestOf(priorities, pain, grade, findings),
    },
    ...asked,
    changes: planChanges(review, earlier, catalogue),
    pain,
    keeps: planKeeps(review, grade, catalogue, rows),
    entries: planEntries(review, grade, catalogue),
    findings,
    film: planFilm(asWritten, grade, catalogue, { pain, held: held.entries, lighter }),
    filmEffort: filmEffort(review),
    cautions: planCautions(review, catalogue),
    rubric: { name: catalogue.rubric.name, version: grade.rubric.version },
  };
}

/** The cautions that this session calls for, by the part of the letter they belong to. */
function planCautions(review: Review, catalogue: Catalogue): LetterPlan['cautions'] {
  const due = cautionsDue(review, catalogue);
  const isOfPain = ({ applies }: Caution): boolean => applies === 'pain' || applies === 'painToSettle';
  return {
    stop: due.filter(({ applies }) => applies === 'stop'),
    pain: due.filter(isOfPain),
    other: due.filter((caution) => caution.applies !== 'stop' && !isOfPain(caution)),
  };
}

/** How many repetitions and how many holds are marked, those that two cameras show once. */
function markedIn({ entries }: Review, catalogue: Catalogue): Pick<LetterPlan, 'reps' | 'holds'> {
  const count = (own: readonly Entry[]): number =>
    own.flatMap(({ clips }) => setsOf(clips)).reduce((sum, { lead }) => sum + lead.reps.length, 0);
  return {
    reps: count(entries.filter((entry) => !isHold(entry, catalogue))),
    holds: count(entries.filter((entry) => isHold(entry, catalogue))),
  };
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
