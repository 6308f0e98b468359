import type { Inline } from '../document/document.ts';
import { joined, stamp, text } from '../document/inlines.ts';
import { tidy } from '../document/tidy.ts';
import type { SeenReps, Sighting } from './letterPlan.ts';
import type { Speaker } from './speaker.ts';

const mostMoments = 4;
const mostClips = 3;

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

function sayReps(seen: SeenReps, speaker: Speaker): string {
  switch (seen.kind) {
    case 'set':
      return speaker.say('wholeSet');
    case 'every':
      return speaker.say('everyRep', { count: seen.of });
    case 'some':
      return speaker.say('someReps', {
        count: seen.reps.length,
        reps: speaker.list(spans(seen.reps, speaker)),
        of: speaker.whole(seen.of),
      });
  }
}

function sayOne(sighting: Sighting, speaker: Speaker): Inline[] {
  const reps = speaker.say(sighting.clipName === null ? 'sighting' : 'sightingInClip', {
    exercise: sighting.exercise,
    clip: tidy(sighting.clipName ?? ''),
    reps: sayReps(sighting.reps, speaker),
  });
  const shown = sighting.momentsUs.slice(0, mostMoments);
  if (shown.length === 0) return [text(reps)];
  const left = sighting.momentsUs.length - shown.length;
  const more = left > 0 ? [text(speaker.say('moreMoments', { count: left }))] : [];
  const times = speaker.listed([...shown.map((us) => stamp(sighting.clip, us, speaker.clock(us))), ...more]);
  const line = times.map((part) => (typeof part === 'string' ? text(part) : part));
  return joined(speaker.sayAround('sightingAt', { times: line }, { sighting: reps }));
}

/** Where something was seen: exercise, reps and times, clip by clip, the first few of many. */
export function sayWhere(sightings: readonly Sighting[], speaker: Speaker): Inline[] {
  const shown = sightings.slice(0, mostClips);
  const left = sightings.length - shown.length;
  const parts = shown.map((sighting) => sayOne(sighting, speaker));
  if (left > 0) parts.push([text(speaker.say('moreClips', { count: left }))]);
  return parts.flatMap((part, index) => (index === 0 ? part : [text('; '), ...part]));
}
