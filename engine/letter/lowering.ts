import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { momentUsInClip } from '../review/parts.ts';
import type { Clip, Entry, Review } from '../review/review.ts';
import { mediaToLiftingUs } from '../time/moment.ts';
import { parseTempo } from '../time/tempo.ts';
import type { KeepSeen, Sighting } from './letterPlan.ts';
import { ofEntry } from './sightings.ts';

type TimedRep = { readonly rep: number; readonly startUs: number; readonly seconds: number };

/** The way down of each rep whose marks tell it: from its start to the stretched end, in lifting time. */
function timedReps(clip: Clip): TimedRep[] {
  return clip.reps.flatMap(({ index, start, stretchedEnd }) => {
    const startUs = momentUsInClip(start, clip);
    const endUs = stretchedEnd === undefined ? null : momentUsInClip(stretchedEnd, clip);
    if (startUs === null || endUs === null || endUs <= startUs) return [];
    return [{ rep: index, startUs, seconds: mediaToLiftingUs(endUs - startUs, clip.realTimeFactor) / 1e6 }];
  });
}

/** The shortest way down that still fits what was asked, in seconds. */
function asked(entry: Entry, review: Review, catalogue: Catalogue): number {
  const tempo = entry.plan?.sets.flatMap((set) => (set.tempo === undefined ? [] : (parseTempo(set.tempo) ?? [])))[0];
  const target = findExercise(catalogue, entry.exercise)?.targets.tempo[review.trainee.goal].eccentricS[0];
  return tempo?.eccentricS ?? target ?? 0;
}

/** A way down this much shorter than asked still counts as it, in seconds. */
const toleranceS = 0.25;
/** The last way down of a set is "still" as long if it keeps this share of the first. */
const kept = 0.85;

const toHalves = (seconds: number): number => Math.round(seconds * 2) / 2;

/**
 * What the marks of a clip's reps say of its way down, where it is worth keeping: the last rep that still took its time. Null
 * where the lift does not begin with a way down, a rep is not marked, or one was quicker than asked.
 */
export function loweringSeen(
  entry: Entry,
  review: Review,
  catalogue: Catalogue,
): { readonly seen: KeepSeen; readonly sighting: Sighting } | null {
  const exercise = findExercise(catalogue, entry.exercise);
  if (exercise?.beginsWith !== 'eccentric' || exercise.lowerEnd !== 'stretched') return null;
  const [clip] = entry.clips.filter(({ reps }) => reps.length > 1);
  if (clip === undefined) return null;
  const timed = timedReps(clip);
  const [first, last] = [timed.at(0), timed.at(-1)];
  if (first === undefined || last === undefined || timed.length < clip.reps.length) return null;
  const least = asked(entry, review, catalogue) - toleranceS;
  if (timed.some(({ seconds }) => seconds < least || toHalves(seconds) < 1)) return null;
  const still = last.seconds >= kept * first.seconds;
  const shown = still ? last : timed.reduce((a, b) => (b.seconds < a.seconds ? b : a));
  return {
    seen: { kind: 'lowering', seconds: toHalves(shown.seconds), still, orMore: false },
    sighting: {
      exercise: exercise.name,
      clip: clip.id,
      clipName: entry.clips.length > 1 ? clip.name : null,
      reps: { kind: 'some', reps: [shown.rep], of: clip.reps.length },
      ...ofEntry(entry, catalogue),
      momentsUs: [shown.startUs],
    },
  };
}
