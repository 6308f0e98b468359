import type { Inline } from '../document/document.ts';
import { stamp, text } from '../document/inlines.ts';
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
      : [speaker.say(speaker.words.repSpan, { from, to })];
  });
}

function sayReps(seen: SeenReps, speaker: Speaker): string {
  switch (seen.kind) {
    case 'set':
      return speaker.words.wholeSet;
    case 'every':
      return speaker.count(speaker.words.everyRep, seen.of);
    case 'some':
      return speaker.count(speaker.words.someReps, seen.reps.length, {
        reps: speaker.list(spans(seen.reps, speaker)),
        of: speaker.whole(seen.of),
      });
  }
}

/** The marker stands where a moment's words go, so that the moments can be told from the text around them. */
const marker = (index: number): string => `\u0000${index}\u0000`;

function sayOne(sighting: Sighting, speaker: Speaker): Inline[] {
  const place = speaker.say(sighting.clipName === null ? speaker.words.place : speaker.words.placeInClip, {
    exercise: sighting.exercise,
    clip: tidy(sighting.clipName ?? ''),
    reps: sayReps(sighting.reps, speaker),
  });
  const shown = sighting.momentsUs.slice(0, mostMoments);
  if (shown.length === 0) return [text(place)];
  const left = sighting.momentsUs.length - shown.length;
  const times = shown.map((_, index) => marker(index));
  if (left > 0) times.push(speaker.count(speaker.words.moreMoments, left));
  const line = speaker.say(speaker.words.placeAt, { place, times: speaker.list(times) });
  return line.split('\u0000').flatMap((part, index): Inline[] => {
    const us = index % 2 === 1 ? shown[Number(part)] : undefined;
    if (us !== undefined) return [stamp(sighting.clip, us, speaker.clock(us))];
    return part === '' ? [] : [text(part)];
  });
}

/** Where something was seen: exercise, reps and times, clip by clip, the first few of many. */
export function sayWhere(sightings: readonly Sighting[], speaker: Speaker): Inline[] {
  const shown = sightings.slice(0, mostClips);
  const left = sightings.length - shown.length;
  const parts = shown.map((sighting) => sayOne(sighting, speaker));
  if (left > 0) parts.push([text(speaker.count(speaker.words.moreClips, left))]);
  return parts.flatMap((part, index) => (index === 0 ? part : [text('; '), ...part]));
}

/** A text with one `{where}` in it, the sightings set into it with their moments as moments. */
export function sayAround(
  template: string,
  where: readonly Inline[],
  speaker: Speaker,
  values: Readonly<Record<string, string>> = {},
): Inline[] {
  const [before = '', after = ''] = speaker.say(template, { ...values, where: '\u0000' }).split('\u0000');
  return [text(before), ...where, text(after)].filter((inline) => inline.text !== '');
}
