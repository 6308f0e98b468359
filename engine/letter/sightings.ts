import { type Catalogue, findExercise } from '../exercises/catalogue.ts';
import { setsOf } from '../review/camerasOfSet.ts';
import type { Clip, Entry } from '../review/review.ts';
import type { CriterionId } from '../rubric/rubric.ts';
import type { JudgingRow } from '../sheet/flagRows.ts';
import type { SeenReps, Sighting } from './letterPlan.ts';

function seenReps(rows: readonly JudgingRow[], of: number): SeenReps {
  if (of === 0) return { kind: 'set' };
  const reps = [...new Set(rows.flatMap((row) => row.reps ?? []))].sort((a, b) => a - b);
  const whole = rows.some((row) => row.reps === null) || reps.length >= of;
  return whole ? { kind: 'every', of } : { kind: 'some', reps, of };
}

/** Whether what is marked in an entry's clips are holds of one position, not repetitions. */
export const isHold = (entry: Entry, catalogue: Catalogue): boolean =>
  findExercise(catalogue, entry.exercise)?.beginsWith === 'hold';

/** What a sighting says of the entry it belongs to. */
export const ofEntry = (entry: Entry, catalogue: Catalogue): Pick<Sighting, 'unit' | 'entry'> => ({
  unit: isHold(entry, catalogue) ? 'hold' : 'rep',
  entry: { id: entry.id, reps: setsOf(entry.clips).reduce((sum, { lead }) => sum + lead.reps.length, 0) },
});

/** The rows of one clip with their moments, rising. */
function inClip(rows: readonly JudgingRow[], clip: Clip) {
  const own = rows.filter((row) => row.clip === clip.id);
  const moments = new Set(own.flatMap((row) => (row.us === null ? [] : [row.us])));
  return { own, clip: clip.id, clipName: clip.name, momentsUs: [...moments].sort((a, b) => a - b) };
}

/** Where rows of one entry were seen, set by set in the entry's order: reps that two cameras show are the same reps. */
export function sightingsOf(rows: readonly JudgingRow[], entry: Entry, catalogue: Catalogue): Sighting[] {
  return setsOf(entry.clips).flatMap(({ lead, others }) => {
    const cameras = [lead, ...others].map((clip) => inClip(rows, clip)).filter(({ own }) => own.length > 0);
    const all = cameras.flatMap(({ own }) => own);
    const [[first], [camera, ...rest]] = [all, cameras];
    if (first === undefined || camera === undefined) return [];
    return {
      exercise: first.exercise,
      clip: camera.clip,
      clipName: entry.clips.length > 1 ? camera.clipName : null,
      reps: seenReps(all, lead.reps.length),
      ...ofEntry(entry, catalogue),
      momentsUs: camera.momentsUs,
      ...(rest.length > 0 && { alsoIn: rest.map(({ own: _, ...other }) => other) }),
    };
  });
}

/** The sets of an entry that hold any of some clips, whichever camera filmed them. */
const setsWith = (entry: Entry, clips: ReadonlySet<string>) =>
  setsOf(entry.clips).filter(({ lead, others }) => [lead, ...others].some(({ id }) => clips.has(id)));

/** Reps, or sets without marked reps, in the clips of an entry on which somebody looked at a criterion. */
export function unitsOpened(entry: Entry, criterion: CriterionId): number {
  const judged = [...entry.flags, ...entry.ticks].filter((one) => one.criterion === criterion);
  const opened = setsWith(entry, new Set(judged.map(({ clip }) => clip)));
  return opened.reduce((sum, { lead }) => sum + Math.max(1, lead.reps.length), 0);
}

/** How many reps, or sets without marked reps, were seen. */
export function unitsOfReps(seen: SeenReps): number {
  switch (seen.kind) {
    case 'set':
      return 1;
    case 'every':
      return seen.of;
    case 'some':
      return seen.reps.length;
  }
}

/** Reps, or sets without marked reps, that the rows touch. */
export const unitsTouched = (rows: readonly JudgingRow[], entry: Entry): number =>
  setsWith(entry, new Set(rows.map(({ clip }) => clip))).reduce((sum, { lead, others }) => {
    const clips = new Set([lead, ...others].map(({ id }) => id));
    const own = rows.filter(({ clip }) => clips.has(clip));
    return sum + unitsOfReps(seenReps(own, lead.reps.length));
  }, 0);
