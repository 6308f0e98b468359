import { type Inline, joined, stamp, text } from '../document/document.ts';
import { type InLanguage, inLanguage } from '../document/inLanguage.ts';
import { tidy } from '../document/words.ts';
import { type Language, localeOf } from '../language/language.ts';
import { formatMessage, formatMessageParts } from '../message/formatMessage.ts';
import type { MessageValues } from '../message/message.ts';
import type { LetterMessageId, LetterMessages } from '../wording/english/letter.ts';
import { letterWording, withinSentence } from '../wording/wordings.ts';
import type { Tone } from './letter.ts';
import type { SeenReps, Sighting } from './letterPlan.ts';

/** Lines by the name of the value they fill. */
type Lines = Readonly<Record<string, readonly Inline[]>>;

/** Speaks one language in one voice. */
export type Speaker = InLanguage & {
  readonly language: Language;
  /** A name or a clause as it stands inside a sentence: English takes its capital off, German keeps it. */
  readonly within: (name: string) => string;
  /** A text of the letter; throws where a value is missing, so that no letter goes out with a gap. */
  readonly say: (id: LetterMessageId, values?: MessageValues) => string;
  /** A text with whole lines set into it, their moments kept as moments. */
  readonly sayAround: (id: LetterMessageId, lines: Lines, values?: MessageValues) => Inline[];
};

function messagesOf(language: Language, voice: 'coach' | 'self', tone: Tone): LetterMessages {
  const { coach, self, tones } = letterWording[language];
  if (voice === 'self') return self;
  return tone === 'plain' ? coach : { ...coach, ...tones[tone] };
}

/** The speaker for a language, voice and tone; an athlete's own review has one tone. */
export function speakerOf(language: Language, voice: 'coach' | 'self', tone: Tone = 'plain'): Speaker {
  const locale = localeOf[language];
  const messages = messagesOf(language, voice, tone);
  return {
    ...inLanguage(locale),
    language,
    within: (name) => withinSentence(language, name),
    say: (id, values) => formatMessage(messages[id], locale, values),
    sayAround: (id, lines, values) => {
      const set = Object.entries(lines).map(([name, line]) => [name, { line }] as const);
      return formatMessageParts(messages[id], locale, { ...values, ...Object.fromEntries(set) })
        .flatMap((part) => (typeof part === 'string' ? [text(part)] : part.line))
        .filter((inline) => inline.text !== '');
    },
  };
}

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
