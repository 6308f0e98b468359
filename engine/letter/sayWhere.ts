import { type Inline, joined, stamp, text } from '../document/document.ts';
import { tidy } from '../document/words.ts';
import type { Sighting } from './letterPlan.ts';
import { unitsOfReps } from './sightings.ts';
import type { Speaker } from './speaker.ts';

const mostMoments = 3;
const mostClips = 6;

/** Three or more reps in a row become a span: 1, 2, 3, 5 → "1 to 3" and "5". */
function spans(reps: readonly number[], speaker: Speaker): string[] {
  const runs: number[][] = [];
  for (const rep of reps) {
    const run = runs.at(-1);
    if (run?.at(-1) === rep - 1) run.push(rep);
    else runs.push([rep]);
  }
  return runs.flatMap((run) => {
    const [from, to] = [run.at(0), run.at(-1)].map((rep) => speaker.whole(rep ?? 0));
    return run.length < 3 || from === undefined || to === undefined
      ? run.map(speaker.whole)
      : [speaker.say('repSpan', { from, to })];
  });
}

function sayReps({ reps: seen, unit }: Sighting, speaker: Speaker): string {
  const holds = unit === 'hold' ? 1 : 0;
  switch (seen.kind) {
    case 'set':
      return speaker.say('wholeSet');
    case 'every':
      return speaker.say('everyRep', { count: seen.of, holds });
    case 'some':
      return speaker.say('someReps', {
        count: seen.reps.length,
        reps: speaker.list(spans(seen.reps, speaker)),
        of: speaker.whole(seen.of),
        holds,
      });
  }
}

/** Whole seconds are enough for people, so moments within one are one. */
export function shownMoments({ clip, momentsUs }: Pick<Sighting, 'clip' | 'momentsUs'>, speaker: Speaker): Inline[] {
  const firstOfEach = momentsUs.filter(
    (us, at) => momentsUs.findIndex((other) => speaker.secondsClock(other) === speaker.secondsClock(us)) === at,
  );
  const shown = firstOfEach.slice(0, mostMoments).map((us) => stamp(clip, us, speaker.secondsClock(us)));
  const left = firstOfEach.length - shown.length;
  const more = left > 0 ? [text(speaker.say('moreMoments', { count: left }))] : [];
  return speaker.listed([...shown, ...more]).map((part) => (typeof part === 'string' ? text(part) : part));
}

const isOneRep = ({ reps }: Sighting): boolean =>
  reps.kind === 'some' ? reps.reps.length === 1 : reps.kind === 'every' && reps.of === 1;

/** One clip: "0:04, rep 2 of 5", or "reps 2 and 4 of 5 (0:04 and 0:12)". */
function sayOne(sighting: Sighting, speaker: Speaker): Inline[] {
  const reps = sayReps(sighting, speaker);
  const times = shownMoments(sighting, speaker);
  if (times.length === 0) return [text(reps)];
  const id = isOneRep(sighting) && times.length === 1 ? 'momentOfRep' : 'momentsOfReps';
  return joined([...speaker.sayAround(id, { times }, { reps }), ...sayOtherCameras(sighting, speaker)]);
}

/** The moments that other cameras of the set show: ", also in Front (0:14)". */
const sayOtherCameras = ({ alsoIn = [] }: Sighting, speaker: Speaker): Inline[] =>
  alsoIn.flatMap((other) => {
    const times = shownMoments(other, speaker);
    return times.length === 0 ? [] : speaker.sayAround('alsoInClip', { times }, { clip: tidy(other.clipName) });
  });

/** How places name the exercise: each its own, or none where it is known which. */
export type Naming = 'exercise' | 'none';

/** What stands before a place: exercise and clip, each only where it is not clear and not just named. */
function sayNames(sighting: Sighting, before: Sighting | undefined, naming: Naming): string {
  const names = [
    ...(naming === 'none' || before?.exercise === sighting.exercise ? [] : [sighting.exercise]),
    ...(sighting.clipName === null || tidy(before?.clipName ?? '') === tidy(sighting.clipName)
      ? []
      : [tidy(sighting.clipName)]),
  ];
  return names.map((name) => `${name}, `).join('');
}

const isEvery = ({ reps, unit }: Sighting): boolean => reps.kind === 'every' && unit === 'rep';

/** Every rep of several exercises: "every rep of the back squat (0:01) and the bench press (0:02)". */
function sayEvery(sightings: readonly Sighting[], speaker: Speaker): Inline[] {
  const places = sightings.map((sighting) => {
    const name = text(speaker.lifts([sighting.exercise]));
    const times = shownMoments(sighting, speaker).slice(0, 1);
    return times.length === 0 ? [name] : joined(speaker.sayAround('momentsOfReps', { times }, { reps: name.text }));
  });
  const listed = speaker.listed(places).flatMap((part) => (typeof part === 'string' ? [text(part)] : part));
  return joined(speaker.sayAround('everyRepOf', { places: listed }));
}

/** One lift of several by how many of its marked reps were seen: "bench press, all 24 reps", "leg press, 7 of 36 reps". */
function sayCount(exercise: string, sightings: readonly Sighting[], speaker: Speaker): Inline[] {
  const unmarked = sightings.filter(({ reps }) => reps.kind === 'set').length;
  const seen = sightings.reduce((sum, { reps }) => sum + unitsOfReps(reps), 0) - unmarked;
  const entries = new Map(sightings.map(({ entry }) => [entry.id, entry.reps]));
  const inAll = [...entries.values()].reduce((sum, reps) => sum + reps, 0);
  const holds = sightings.some(({ unit }) => unit === 'hold') ? 1 : 0;
  const counted =
    seen === inAll
      ? speaker.say('everyRep', { count: seen, holds })
      : speaker.say('countedReps', { of: speaker.whole(inAll), reps: speaker.whole(seen), holds });
  const said = [
    ...(seen === 0 ? [] : [counted]),
    ...(unmarked === 0 ? [] : [speaker.say('wholeSets', { count: unmarked })]),
  ];
  return [text(`${exercise}, ${speaker.list(said)}`)];
}

/** Every rep of all clips of an exercise: "all 15 reps", with a moment of each clip where there is one; null for anything less. */
function sayAllClips(sightings: readonly Sighting[], speaker: Speaker, naming: Naming): Inline[] | null {
  const [first] = sightings;
  const count = sightings.reduce((sum, { reps }) => sum + (reps.kind === 'every' ? reps.of : 0), 0);
  const entries = new Map(sightings.map(({ entry }) => [entry.id, entry.reps]));
  const inAll = [...entries.values()].reduce((sum, reps) => sum + reps, 0);
  const isPlain = ({ reps, alsoIn }: Sighting): boolean => reps.kind === 'every' && alsoIn === undefined;
  if (first === undefined || sightings.length < 2 || count !== inAll || !sightings.every(isPlain)) return null;
  const reps = speaker.say('everyRep', { count, holds: first.unit === 'hold' ? 1 : 0 });
  const name = text(naming === 'none' ? '' : `${first.exercise}, `);
  const moments = sightings.flatMap((sighting, at) => {
    const times = shownMoments(sighting, speaker);
    return times.length === 0 ? [] : [joined([text(sayNames(sighting, sightings[at - 1], 'none')), ...times])];
  });
  const left = moments.length - mostClips;
  const shown = [
    ...moments.slice(0, mostClips),
    ...(left > 0 ? [[text(speaker.say('moreClips', { count: left }))]] : []),
  ];
  if (shown.length === 0) return joined([name, text(reps)]);
  const times = shown.flatMap((part, index) => (index === 0 ? part : [text('; '), ...part]));
  return joined([name, ...speaker.sayAround('momentsOfReps', { times: joined(times) }, { reps })]);
}

/** The clips of one exercise, the first few of many. */
function sayClips(sightings: readonly Sighting[], speaker: Speaker, naming: Naming): Inline[][] {
  const all = sayAllClips(sightings, speaker, naming);
  if (all !== null) return [all];
  const shown = sightings.slice(0, mostClips);
  const left = sightings.length - shown.length;
  const parts = shown.map((sighting, index) =>
    joined([text(sayNames(sighting, shown[index - 1], naming)), ...sayOne(sighting, speaker)]),
  );
  return left === 0 ? parts : [...parts, [text(speaker.say('moreClips', { count: left }))]];
}

/** Every lift by its name: one clip with its reps and moments, several by how many reps they show. */
function sayLifts(sightings: readonly Sighting[], speaker: Speaker): Inline[][] {
  return [...Map.groupBy(sightings, ({ exercise }) => exercise)].map(([exercise, own]) => {
    const [only] = own;
    if (only === undefined || own.length > 1) return sayCount(exercise, own, speaker);
    return joined([text(sayNames(only, undefined, 'exercise')), ...sayOne(only, speaker)]);
  });
}

/** Where something was seen: exercise, reps and times, clip by clip, the first few of many; over several exercises, each of them. */
export function sayWhere(sightings: readonly Sighting[], speaker: Speaker, naming: Naming): Inline[] {
  const exercises = new Set(sightings.map(({ exercise }) => exercise)).size;
  if (naming === 'exercise' && exercises > 1 && exercises === sightings.length && sightings.every(isEvery)) {
    return sayEvery(sightings, speaker);
  }
  const parts = exercises > 1 ? sayLifts(sightings, speaker) : sayClips(sightings, speaker, naming);
  return joined(parts.flatMap((part, index) => (index === 0 ? part : [text('; '), ...part]))).filter(
    (inline) => inline.text !== '',
  );
}
