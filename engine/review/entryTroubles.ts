import type { Exercise } from '../exercises/exercise.ts';
import { turnedSize } from '../framing/picturePlaces.ts';
import type { CriterionId, Rubric } from '../rubric/rubric.ts';
import type { Moment } from '../time/moment.ts';
import { compareMoments, repIndices } from './parts.ts';
import type { Clip, FlagAsRead, Rep, Reps, Tick } from './review.ts';
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

/** What a flag names that isn't there: criterion, fault, clip, reps; and a fault on a plain note. */
export function* flagTroubles(flag: FlagAsRead, at: JudgementSite): Generator<Trouble> {
  yield* criterionTroubles(flag.criterion, at);
  const { fault } = flag;
  if (flag.severity === null && fault !== null) {
    yield { path: at.path, what: 'names a fault without a severity: give it one, or leave the fault out' };
  }
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

/** A moment outside its clip, where the clip's facts are known. */
export function momentTrouble(moment: Moment, clip: Clip, path: string): Trouble | null {
  const { facts } = clip;
  if (facts === undefined) return null;
  if ('frame' in moment) {
    if (moment.frame < facts.frames) return null;
    const what = `is at frame ${moment.frame}, but clip ${quote(clip.id)} ends with frame ${facts.frames - 1}`;
    return { path, what: facts.frames === 0 ? `is at a frame, but clip ${quote(clip.id)} has none` : what };
  }
  if (moment.seconds * 1e6 <= facts.durationUs + 1) return null;
  const lasts = (facts.durationUs / 1e6).toFixed(3);
  return { path, what: `is at ${moment.seconds.toFixed(3)} s, but clip ${quote(clip.id)} lasts ${lasts} s` };
}

function* edgeTroubles(rep: Rep, clip: Clip, path: string): Generator<Trouble> {
  const edges = [
    ['start', rep.start],
    ['stretchedEnd', rep.stretchedEnd],
    ['end', rep.end],
  ] as const;
  let before: readonly [string, Moment] | null = null;
  for (const [name, moment] of edges) {
    if (moment === undefined) continue;
    const outside = momentTrouble(moment, clip, `${path}.${name}`);
    if (outside !== null) yield outside;
    const order = before === null ? null : compareMoments(before[1], moment, clip);
    if (before !== null && order !== null && order > 0) {
      yield { path, what: `has its ${name} before its ${before[0]}: put its edges in order` };
    }
    before = [name, moment];
  }
}

/** Reps that come twice, lie outside the clip, have edges out of order, or don't follow each other in time. */
export function* repTroubles(clip: Clip, path: string): Generator<Trouble> {
  const seen = new Set<number>();
  for (const [i, rep] of clip.reps.entries()) {
    const at = `${path}.reps[${i}]`;
    if (seen.has(rep.index)) yield { path: at, what: `is rep ${rep.index} for the second time: number each rep once` };
    seen.add(rep.index);
    yield* edgeTroubles(rep, clip, at);
  }
  const inOrder = [...clip.reps].sort((a, b) => a.index - b.index);
  for (const [i, rep] of inOrder.entries()) {
    const former = inOrder[i - 1];
    const order = former === undefined ? null : compareMoments(former.start, rep.start, clip);
    if (former !== undefined && order !== null && order > 0) {
      yield {
        path: `${path}.reps`,
        what: `has rep ${rep.index} starting before rep ${former.index}: number reps by time`,
      };
    }
  }
}

/** Drawings that show outside of their clip or end before they begin, and plumbs that aren't vertical. */
export function* drawingTroubles(clip: Clip, clipPath: string): Generator<Trouble> {
  for (const [i, drawing] of (clip.drawings ?? []).entries()) {
    const path = `${clipPath}.drawings[${i}]`;
    for (const name of ['from', 'to'] as const) {
      const outside = momentTrouble(drawing[name], clip, `${path}.${name}`);
      if (outside !== null) yield outside;
    }
    const order = compareMoments(drawing.from, drawing.to, clip);
    if (order !== null && order > 0) yield { path, what: 'ends before it begins: put its moments in order' };
    if (drawing.shape === 'plumb' && drawing.points[0].x !== drawing.points[1].x) {
      yield { path, what: 'is a plumb that isn’t vertical: give both points the same x, or make it a line' };
    }
  }
}

/** A section outside of its footage or that ends before it begins, and a part of the picture that isn't there. */
export function* framingTroubles(clip: Clip, clipPath: string): Generator<Trouble> {
  const { section, framing, facts } = clip;
  if (section !== undefined) {
    for (const name of ['from', 'to'] as const) {
      const outside = momentTrouble(section[name], clip, `${clipPath}.section.${name}`);
      if (outside !== null) yield outside;
    }
    if (section.from.frame > section.to.frame || section.from.ticks > section.to.ticks) {
      yield { path: `${clipPath}.section`, what: 'ends before it begins: put its frames in order' };
    }
  }
  const crop = framing?.crop ?? null;
  if (facts === undefined || crop === null || framing === undefined) return;
  const asHeld = turnedSize(facts, facts.rotationDeg);
  const { width, height } = turnedSize(asHeld, framing.turnDeg);
  // Pixels that are not square make the picture wider than the file says.
  if (crop.leftPx < 2 * width && crop.topPx < 2 * height && width > 0) return;
  yield {
    path: `${clipPath}.framing.crop`,
    what: `lies outside of the picture of ${width} × ${height} pixels: correct it`,
  };
}
