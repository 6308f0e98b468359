import { asFilmed, type Framing, isAsFilmed } from '../framing/framing.ts';
import type { PointPx } from '../recording/recording.ts';
import type { SetUp } from '../recording/setUp.ts';
import { type Plan, type PlannedSet, runsOfSets } from './plan.ts';
import type { Clip, Entry, Review } from './review.ts';

const tidyClip = (clip: Clip) => ({
  id: clip.id,
  name: clip.name,
  path: clip.path,
  facts: clip.facts && {
    sha256: clip.facts.sha256,
    codec: clip.facts.codec,
    width: clip.facts.width,
    height: clip.facts.height,
    rotationDeg: clip.facts.rotationDeg,
    frames: clip.facts.frames,
    timeBase: { numerator: clip.facts.timeBase.numerator, denominator: clip.facts.timeBase.denominator },
    startUs: clip.facts.startUs,
    durationUs: clip.facts.durationUs,
  },
  view: clip.view,
  realTimeFactor: clip.realTimeFactor,
  loadKg: clip.loadKg,
  reps: clip.reps.map(({ index, start, stretchedEnd, end, measured }) => ({
    index,
    start: tidyMoment(start),
    stretchedEnd: stretchedEnd && tidyMoment(stretchedEnd),
    end: end && tidyMoment(end),
    measured,
  })),
  drawings: clip.drawings?.map((drawing) => ({
    id: drawing.id,
    shape: drawing.shape,
    points: drawing.points.map(({ x, y }) => ({ x, y })),
    text: drawing.shape === 'text' ? drawing.text : undefined,
    from: tidyMoment(drawing.from),
    to: tidyMoment(drawing.to),
  })),
  setUp: clip.setUp && tidySetUp(clip.setUp),
  framing: clip.framing && tidyFraming(clip.framing),
  section: clip.section && { from: tidyMoment(clip.section.from), to: tidyMoment(clip.section.to) },
  sameSet: clip.sameSet && { clip: clip.sameSet.clip, offsetUs: clip.sameSet.offsetUs },
});

/** What is as filmed is left out; nothing at all where all of it is. */
function tidyFraming(framing: Framing) {
  if (isAsFilmed(framing)) return undefined;
  const { turnDeg, mirrored, crop, brightness } = framing;
  return {
    turnDeg: turnDeg === asFilmed.turnDeg ? undefined : turnDeg,
    mirrored: mirrored ? true : undefined,
    crop:
      crop === null
        ? undefined
        : { leftPx: crop.leftPx, topPx: crop.topPx, widthPx: crop.widthPx, heightPx: crop.heightPx },
    brightness: brightness === asFilmed.brightness ? undefined : brightness,
  };
}

const tidyPoint = ({ xPx, yPx }: PointPx) => ({ xPx, yPx });

const tidySetUp = ({ discDiameterM, knownLength, facing, follow, plumb, clicks, depthClicks, backClicks }: SetUp) => ({
  discDiameterM,
  knownLength: knownLength && {
    from: tidyPoint(knownLength.from),
    to: tidyPoint(knownLength.to),
    lengthM: knownLength.lengthM,
  },
  facing,
  follow: follow === 'auto' ? undefined : follow,
  plumb: plumb && { top: tidyPoint(plumb.top), bottom: tidyPoint(plumb.bottom) },
  clicks: clicks.map(({ frame, what, at, radiusPx }) => ({ frame, what, at: tidyPoint(at), radiusPx })),
  depthClicks: depthClicks.map(({ frame, hipCrease, kneeTop }) => ({
    frame,
    hipCrease: tidyPoint(hipCrease),
    kneeTop: tidyPoint(kneeTop),
  })),
  backClicks: backClicks.map(({ frame, points }) => ({ frame, points: points.map(tidyPoint) })),
});

const tidyMoment = (moment: Clip['reps'][number]['start']) =>
  'seconds' in moment ? { seconds: moment.seconds } : { frame: moment.frame, ticks: moment.ticks };

const tidyOverride = (override: Entry['override']) => override && { score: override.score, reason: override.reason };

/** Equal sets are written as their number, so that programs which know only that form read them. */
function tidyPlan(plan: Plan) {
  const [equal, ...others] = runsOfSets(plan);
  const tidySet = ({ reps, loadKg, tempo, repsInReserve }: PlannedSet) => ({ reps, loadKg, tempo, repsInReserve });
  return equal !== undefined && others.length === 0
    ? { sets: equal.count, ...tidySet(equal.set) }
    : { sets: plan.sets.map(tidySet) };
}

const tidyEntry = (entry: Entry) => ({
  id: entry.id,
  exercise: entry.exercise,
  plan: entry.plan && tidyPlan(entry.plan),
  setsDone: entry.setsDone,
  override: tidyOverride(entry.override),
  clips: entry.clips.map(tidyClip),
  flags: entry.flags.map((flag) => ({
    id: flag.id,
    clip: flag.clip,
    criterion: flag.criterion,
    fault: flag.fault,
    severity: flag.severity,
    reps: flag.reps,
    at: tidyMoment(flag.at),
    note: flag.note,
    cue: flag.cue,
  })),
  ticks: entry.ticks.map(({ clip, criterion, reps }) => ({ clip, criterion, reps })),
});

/**
 * The text of a review file: JSON, indented by two, keys in one fixed order, a line feed at the end. The same
 * review gives the same text, and `readReview` gives the same review back.
 */
export function writeReview(review: Review): string {
  const { trainee, session } = review;
  const tidy = {
    format: review.format,
    version: review.version,
    rubric: review.rubric && { id: review.rubric.id, version: review.rubric.version },
    voice: review.voice,
    coach: review.coach,
    trainee: {
      name: trainee.name,
      goal: trainee.goal,
      experience: trainee.experience,
      units: trainee.units,
      minor: trainee.minor,
      equipment: trainee.equipment,
    },
    session: {
      id: session.id,
      title: session.title,
      date: session.date,
      notes: session.notes,
      painNote: session.painNote,
      override: tidyOverride(session.override),
      equipment: session.equipment,
    },
    entries: review.entries.map(tidyEntry),
  };
  return `${JSON.stringify(tidy, null, 2)}\n`;
}
