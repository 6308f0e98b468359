import { type Block, emphasis, strong, text } from '../document/document.ts';
import { sentence, tidy } from '../document/words.ts';
import { type Letter, type LetterStyle, paragraphIds, type SectionId, type Stills, sectionIds } from './letter.ts';
import type { Keep, LetterPlan } from './letterPlan.ts';
import { type Speaker, sayWhere, speakerOf } from './speaker.ts';
import { writeChanges, writeFilm, writeProgramme } from './writeAdvice.ts';
import { writeCautions, writeFirstNotices } from './writeNotices.ts';
import { writeEntries, writeOverall } from './writeOverall.ts';
import { priorityParts, writePriorities } from './writePriorities.ts';

/** The name a letter greets: the first word of it, isolated where it is written from right to left. */
const firstName = (name: string): string => tidy(name.replace(/[\u2068\u2069]/g, '').split(' ')[0] ?? name);

function writeOpening(plan: LetterPlan, speaker: Speaker): Block[] {
  const date = speaker.date(plan.date);
  const opening =
    plan.clipNames.length === 0
      ? speaker.say('openingWithoutFilm', { date })
      : speaker.say(plan.reps === 0 ? 'openingUnmarked' : 'opening', {
          date,
          exercises: speaker.list([...new Set(plan.entries.map((entry) => entry.exercise))]),
          clips: speaker.say('clipCount', { count: plan.clipNames.length }),
          reps: speaker.say('repCount', { count: plan.reps }),
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

function keepBlock(keep: Keep, id: string, speaker: Speaker): Block {
  if (keep.kind === 'praised') {
    const where = sayWhere(keep.sightings, speaker);
    const label = strong(speaker.say('keepLabel', { criterion: keep.criterion }));
    const line = speaker.sayAround('keepFlag', { where }, { what: sentence(keep.what) });
    return { kind: 'paragraph', id, inlines: [label, text(' '), ...line] };
  }
  const criteria = speaker.list(keep.criteria.map(speaker.within));
  const line =
    keep.allReps === null
      ? speaker.say('keepTicked', { exercise: keep.exercise, criteria })
      : speaker.say('keepTickedAll', { count: keep.allReps, exercise: keep.exercise, criteria });
  return { kind: 'paragraph', id, inlines: [text(line)] };
}

function writeKeeps(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.keeps.length === 0) return [];
  const ids = paragraphIds('keep', plan.keeps);
  return [
    { kind: 'heading', level: 2, id: 'keep', text: speaker.say('keepTitle') },
    ...plan.keeps.map((keep, index) => keepBlock(keep, ids[index] ?? '', speaker)),
  ];
}

function writeClosing(plan: LetterPlan, speaker: Speaker): Block[] {
  const values = {
    date: speaker.date(plan.date),
    rubric: plan.rubric.name,
    version: speaker.whole(plan.rubric.version),
    clips: speaker.list(plan.clipNames.map((name) => speaker.say('quoted', { words: name }))),
  };
  const basis = speaker.say(plan.clipNames.length === 0 ? 'basisWithoutFilm' : 'basis', values);
  const name: Block[] =
    plan.voice === 'self' || plan.coach === ''
      ? []
      : [{ kind: 'paragraph', id: 'sign-off-name', inlines: [text(plan.coach)] }];
  return [
    { kind: 'paragraph', id: 'sign-off', inlines: [text(speaker.say('signOff'))] },
    ...name,
    { kind: 'paragraph', id: 'basis', inlines: [emphasis(basis)] },
  ];
}

const usualStyle: LetterStyle = { length: 'full', tone: 'plain', language: 'en' };

/** The blocks of each section; a short letter has fewer sections. */
function sectionsOf(plan: LetterPlan, speaker: Speaker, { length, stills }: Pick<LetterStyle, 'length'> & WithStills) {
  const always = {
    opening: writeOpening(plan, speaker),
    overall: writeOverall(plan, speaker),
    notices: writeFirstNotices(plan, speaker),
    cautions: writeCautions(plan, speaker),
    closing: writeClosing(plan, speaker),
  };
  const body: Partial<Record<SectionId, readonly Block[]>> =
    length === 'short'
      ? {
          keep: writeKeeps({ ...plan, keeps: plan.keeps.slice(0, 1) }, speaker),
          change: writePriorities(plan, speaker, { stills, parts: ['seen', 'cue'] }),
        }
      : {
          keep: writeKeeps(plan, speaker),
          since: writeChanges(plan, speaker),
          change: writePriorities(plan, speaker, { stills, parts: priorityParts }),
          exercises: writeEntries(plan, speaker),
          programme: writeProgramme(plan, speaker),
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
