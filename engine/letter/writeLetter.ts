import { type Block, emphasis, type Inline, joined, strong, text, upperFirstInline } from '../document/document.ts';
import { sentence, tidy } from '../document/words.ts';
import { type Letter, type LetterStyle, paragraphIds, type SectionId, type Stills, sectionIds } from './letter.ts';
import type { Keep, LetterPlan } from './letterPlan.ts';
import { repsBegun, sayOwnReps, sayWithPlace } from './namedReps.ts';
import { type Naming, sayWhere } from './sayWhere.ts';
import { type Speaker, speakerOf } from './speaker.ts';
import { writeChanges, writeFilm, writeProgramme } from './writeAdvice.ts';
import { writeCautions, writePain, writeUnsafe } from './writeNotices.ts';
import { writeEntries, writeOverall } from './writeOverall.ts';
import { priorityParts, writePriorities } from './writePriorities.ts';

/** The name a letter greets: the first word of it, isolated where it is written from right to left. */
export const firstName = (name: string): string => tidy(name.replace(/[\u2068\u2069]/g, '').split(' ')[0] ?? name);

function writeOpening(plan: LetterPlan, speaker: Speaker): Block[] {
  const date = speaker.date(plan.date);
  const opening =
    plan.clips === 0
      ? speaker.say('openingWithoutFilm', { date })
      : speaker.say('opening', {
          date,
          exercises: speaker.list([...new Set(plan.entries.map((entry) => speaker.within(entry.exercise)))]),
          film: speaker.list([
            speaker.say('clipCount', { count: plan.clips }),
            ...(plan.reps === 0 ? [] : [speaker.say('repCount', { count: plan.reps })]),
            ...(plan.holds === 0 ? [] : [speaker.say('holdCount', { count: plan.holds })]),
          ]),
        });
  return [
    {
      kind: 'paragraph',
      id: 'greeting',
      inlines: [text(speaker.say('greeting', { trainee: firstName(plan.trainee) }))],
    },
    { kind: 'paragraph', id: 'opening', inlines: [text(opening)] },
  ];
}

function sayKeep(seen: Keep['seen'], where: readonly Inline[], speaker: Speaker): Inline[] {
  switch (seen.kind) {
    case 'lowering': {
      const took = { seconds: seen.seconds, more: seen.orMore ? 1 : 0 };
      return speaker.sayAround(seen.still ? 'keepStill' : 'keepLowering', { where }, took);
    }
    case 'held':
      return speaker.sayAround('keepHeld', { where });
    case 'anchor':
      return speaker.sayAround('keepSeen', { where }, { what: sentence(speaker.within(seen.what)) });
    case 'words':
      return speaker.sayAround('keepSeen', { where }, { what: sentence(seen.what) });
  }
}

/** Praise that names its reps itself, with its place behind them; null for any other. */
function sayKeepOfReps({ sightings, seen }: Keep, naming: Naming, speaker: Speaker): Inline[] | null {
  if (seen.kind !== 'words' || repsBegun(seen.what, speaker.language) === null) return null;
  const what = sentence(seen.what);
  const [only, ...further] = sightings;
  if (only === undefined) return null;
  if (further.length === 0) return sayOwnReps(what, only, speaker, naming);
  const of = seen.of ?? undefined;
  return joined([...sayWhere(sightings, speaker, naming), text('. '), ...sayWithPlace(what, of, speaker, naming)]);
}

function keepBlock(keep: Keep, id: string, { oneLift }: LetterPlan, speaker: Speaker): Block {
  const naming = oneLift ? 'none' : 'exercise';
  const label = strong(speaker.say('keepLabel', { criterion: keep.criterion }));
  const where = sayWhere(keep.sightings, speaker, naming);
  const line = sayKeepOfReps(keep, naming, speaker) ?? sayKeep(keep.seen, where, speaker);
  return { kind: 'paragraph', id, inlines: [label, text(' '), ...upperFirstInline(line)] };
}

function writeKeeps(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.keeps.length === 0) return [];
  const ids = paragraphIds('keep', plan.keeps);
  return [
    { kind: 'heading', level: 2, id: 'keep', text: speaker.say('keepTitle') },
    ...plan.keeps.map((keep, index) => keepBlock(keep, ids[index] ?? '', plan, speaker)),
  ];
}

/** Whether the letter names a severity: of a remark without words, or of a fault whose severity has changed. */
function namesSeverity({ priorities, changes }: LetterPlan): boolean {
  return (
    priorities.some(({ notes, fault }) => notes.length === 0 && (fault?.seen ?? '') === '') ||
    changes.some(({ before, now }) => before !== null && now !== null && before.severity !== now.severity)
  );
}

/** The last line: what comes first where something does, else the next clip. */
function signOffOf({ pain, stops, priorities }: LetterPlan): 'signOff' | 'signOffPain' | 'signOffStop' | 'signOffSame' {
  if (pain !== null) return 'signOffPain';
  if (stops.length > 0) return 'signOffStop';
  return priorities.length > 0 ? 'signOff' : 'signOffSame';
}

function writeClosing(plan: LetterPlan, speaker: Speaker): Block[] {
  const values = {
    date: speaker.date(plan.date),
    rubric: plan.rubric.name,
    version: speaker.whole(plan.rubric.version),
    clips: speaker.list(plan.clipNames.map((name) => speaker.say('quoted', { words: name }))),
  };
  const basis = speaker.say(plan.clips === 0 ? 'basisWithoutFilm' : 'basis', values);
  const name: Block[] =
    plan.voice === 'self' || plan.coach === ''
      ? []
      : [{ kind: 'paragraph', id: 'sign-off-name', inlines: [text(plan.coach)] }];
  return [
    { kind: 'paragraph', id: 'sign-off', inlines: [text(speaker.say(signOffOf(plan)))] },
    ...name,
    ...(namesSeverity(plan)
      ? [{ kind: 'paragraph' as const, id: 'severity-key', inlines: [emphasis(speaker.say('severityKey'))] }]
      : []),
    { kind: 'paragraph', id: 'basis', inlines: [emphasis(basis)], fixed: true },
  ];
}

const usualStyle: LetterStyle = { length: 'full', tone: 'plain', language: 'en' };

/** The blocks of each section; a short letter has fewer, and one that sends for help says nothing of training. */
function sectionsOf(plan: LetterPlan, speaker: Speaker, { length, stills }: Pick<LetterStyle, 'length'> & WithStills) {
  const urgent = {
    opening: writeOpening(plan, speaker),
    pain: writePain(plan, speaker),
    unsafe: writeUnsafe(plan, speaker),
    cautions: writeCautions(plan, speaker),
    closing: writeClosing(plan, speaker),
  };
  if (plan.pain?.redFlag === 'emergency') return { ...urgent, exercises: writeEntries(plan, speaker) };
  const always = { ...urgent, overall: writeOverall(plan, speaker) };
  const body: Partial<Record<SectionId, readonly Block[]>> =
    length === 'short'
      ? {
          keep: writeKeeps({ ...plan, keeps: plan.keeps.slice(0, 1) }, speaker),
          change: writePriorities(plan, speaker, { stills, parts: ['load', 'seen', 'cue'] }),
          programme: writeProgramme(plan, speaker, length),
        }
      : {
          keep: writeKeeps(plan, speaker),
          since: writeChanges(plan, speaker),
          change: writePriorities(plan, speaker, { stills, parts: priorityParts }),
          exercises: writeEntries(plan, speaker),
          programme: writeProgramme(plan, speaker, length),
          film: writeFilm(plan, speaker),
        };
  return { ...always, ...body };
}

type WithStills = { readonly stills: Stills };

/**
 * Words a plan. Paragraphs keep their ids from one writing to the next. With `stills`, each priority has beside it the
 * picture of one of its remarks.
 */
export function writeLetter(plan: LetterPlan, style: LetterStyle = usualStyle, stills: Stills = new Map()): Letter {
  const speaker = speakerOf(style.language, plan.voice, style.tone);
  const sections: Partial<Record<SectionId, readonly Block[]>> = sectionsOf(plan, speaker, { ...style, stills });
  return {
    title: speaker.say('title', { trainee: plan.trainee, date: speaker.date(plan.date) }),
    language: speaker.language,
    author: plan.voice === 'self' ? plan.trainee : plan.coach,
    date: plan.date,
    sections: sectionIds.flatMap((id) => {
      const blocks = sections[id] ?? [];
      return blocks.length === 0 ? [] : [{ id, blocks }];
    }),
  };
}
