import {
  type Block,
  emphasis,
  type Inline,
  joined,
  plainText,
  strong,
  text,
  upperFirstInline,
} from '../document/document.ts';
import { sentence, upperFirst } from '../document/words.ts';
import { paragraphIds, type Stills } from './letter.ts';
import type { LetterPlan, PlannedPain, Priority } from './letterPlan.ts';
import { repsBegun, sayOwnReps, sayWithPlace } from './namedReps.ts';
import { nearlySame } from './nearlySame.ts';
import { type Naming, sayWhere } from './sayWhere.ts';
import type { Speaker } from './speaker.ts';

const mostNotes = 2;

const nameOf = (priority: Priority): string => priority.fault?.name ?? priority.criterionName;

/** A sentence of the library, unless the coach's own notes say the same. */
const libraryWords = ({ notes }: Priority, words: string): string =>
  words === '' || notes.some((note) => nearlySame(note, words)) ? '' : sentence(words);

const namingOf = (priority: Priority): Naming => (priority.exercises.length === 1 ? 'none' : 'exercise');

/** Where it was seen, and notes that each speak of the reps of one of these places: theirs is said beside them. */
function saySeenInPlaces(
  priority: Priority,
  notes: readonly string[],
  where: readonly Inline[],
  speaker: Speaker,
): Inline[] {
  const naming = namingOf(priority);
  const said = notes.map((note) => {
    const remark = priority.remarks.find((each) => sentence(each.note) === note);
    return sayWithPlace(note, remark?.sighting, speaker, naming);
  });
  const [first = ''] = notes;
  const library = libraryWords(priority, priority.fault?.seen ?? '');
  const begun = repsBegun(first, speaker.language) === null ? first : library;
  const rest = repsBegun(first, speaker.language) === null ? said.slice(1) : said;
  const opening = begun === '' ? [...where, text('.')] : speaker.sayAround('seen', { where }, { what: begun });
  return joined([...upperFirstInline(opening), ...rest.flatMap((line) => [text(' '), ...line])]);
}

/** What was seen, in the coach's own words where there are some, else in the library's. */
function saySeen(priority: Priority, speaker: Speaker): Inline[] {
  const notes = priority.notes.map(sentence).slice(0, mostNotes);
  const naming = namingOf(priority);
  const [ownNote = ''] = notes;
  const [only, ...further] = priority.sightings;
  if (only !== undefined && further.length === 0) {
    const named = sayOwnReps(ownNote, only, speaker, naming);
    if (named !== null) return joined([...named, ...notes.slice(1).map((note) => text(` ${upperFirst(note)}`))]);
  }
  const where = sayWhere(priority.sightings, speaker, naming);
  if (further.length > 0 && notes.some((note) => repsBegun(note, speaker.language) !== null)) {
    return saySeenInPlaces(priority, notes, where, speaker);
  }
  const [what = '', ...others] = notes.length > 0 ? notes : [sentence(priority.fault?.seen ?? '')];
  const first =
    what === ''
      ? speaker.sayAround(
          'seenPlain',
          { where },
          { severity: speaker.say('severity', { severity: priority.severity }) },
        )
      : speaker.sayAround('seen', { where }, { what });
  const line = upperFirstInline(first);
  return others.length === 0 ? line : [...line, text(` ${others.map(upperFirst).join(' ')}`)];
}

/** Less load, of the lifts that show it. */
const sayLoad = ({ exercises, severity }: Priority, speaker: Speaker): string =>
  speaker.say('loadFirst', { lifts: speaker.lifts(exercises), unsafe: severity === 'stop' ? 'yes' : 'no' });

function sayProof(priority: Priority, speaker: Speaker): string {
  return priority.proof === ''
    ? speaker.say('proofPlain', { criterion: speaker.within(priority.criterionName) })
    : libraryWords(priority, priority.proof);
}

/** What is said of a priority, in this order. */
export const priorityParts = ['load', 'seen', 'why', 'cue', 'drill', 'proof'] as const;
type Part = (typeof priorityParts)[number];

/** How priorities are written: with pictures where there are some, and which parts of what is said. */
type Manner = { readonly stills: Stills; readonly parts: readonly Part[] };

/** The picture of what was seen; none where no remark has a still. */
function writeStill(priority: Priority, id: string, stills: Stills, speaker: Speaker): Block[] {
  const shown = priority.remarks.find(({ flagId }) => stills.has(flagId));
  const still = shown === undefined ? undefined : stills.get(shown.flagId);
  if (shown === undefined || still === undefined) return [];
  const where = upperFirst(plainText(sayWhere([shown.sighting], speaker, 'exercise')));
  const what = sentence(priority.fault?.seen ?? priority.notes[0] ?? nameOf(priority));
  const { source, widthPx, heightPx } = still;
  return [
    {
      kind: 'picture',
      id: `${id}-still`,
      source,
      size: { widthPx, heightPx },
      alt: speaker.say('stillAlt', { where, what }),
      caption: where,
      beside: priorityParts.map((part) => `${id}-${part}`),
    },
  ];
}

/** Which priority of the letter it is: the id of its heading, its number, and the exercises that the heading names; '' for none. */
type Ordinal = { readonly id: string; readonly number: number; readonly places: string };

function writePriority(
  priority: Priority,
  { id, number, places }: Ordinal,
  { stills, parts }: Manner,
  speaker: Speaker,
): Block[] {
  const heading = { number: speaker.whole(number), fault: nameOf(priority) };
  const title = speaker.say('priority', { ...heading, places: places === '' ? 0 : 1, exercise: places });
  // Taking load off is a caution: it can't be put in other words or left out.
  const fixed = (part: Part) => (part === 'load' ? ({ fixed: true } as const) : {});
  const paragraph = (part: Part, label: string, inlines: readonly Inline[]): Block[] =>
    !parts.includes(part) || inlines.every((inline) => inline.text === '')
      ? []
      : [{ kind: 'paragraph', id: `${id}-${part}`, inlines: [strong(label), text(' '), ...inlines], ...fixed(part) }];
  const cue = priority.cue === '' ? '' : speaker.say('cue', { cue: sentence(priority.cue) });
  return [
    { kind: 'heading', level: 3, id, text: title },
    ...writeStill(priority, id, stills, speaker),
    ...paragraph('load', speaker.say('loadLabel'), [text(priority.urgent ? sayLoad(priority, speaker) : '')]),
    ...paragraph('seen', speaker.say('seenLabel'), saySeen(priority, speaker)),
    ...paragraph('why', speaker.say('whyLabel'), [text(libraryWords(priority, priority.fault?.why ?? ''))]),
    ...paragraph('cue', speaker.say('cueLabel'), [
      emphasis(cue),
      ...(priority.cueIsNew ? [text(` ${speaker.say('cueIsNew')}`)] : []),
    ]),
    ...paragraph('drill', speaker.say('drillLabel'), [text(libraryWords(priority, priority.drill))]),
    ...paragraph('proof', speaker.say('proofLabel'), [text(sayProof(priority, speaker))]),
  ];
}

/** Leaves out a paragraph that an earlier priority has already said word for word; what was seen stands under each heading. */
function eachOnce(blocks: readonly Block[]): Block[] {
  const said = new Set<string>();
  return blocks.filter((block) => {
    if (block.kind !== 'paragraph' || block.id.endsWith('-seen')) return true;
    const line = plainText(block.inlines);
    if (said.has(line)) return false;
    said.add(line);
    return true;
  });
}

/** The exercises a heading names: none where there is only one, or where it is of several and no other is called the same. */
function placesOf(priority: Priority, { oneLift, priorities }: LetterPlan, speaker: Speaker): string {
  if (oneLift) return '';
  const same = priorities.filter((other) => nameOf(other) === nameOf(priority)).length;
  return priority.exercises.length === 1 || same > 1 ? speaker.list(priority.exercises.map(speaker.within)) : '';
}

/** Remarks on lifts that pain holds back are for later. */
const sayWaits = ({ remarksOn, step }: PlannedPain, speaker: Speaker): string =>
  speaker.say('changeWaits', { lifts: speaker.lifts(remarksOn), step });

function sayNothingToChange(plan: LetterPlan, speaker: Speaker): string {
  const { overall, remarksLeft, pain, stops, findings } = plan;
  if (pain !== null && overall.state.kind !== 'none') {
    if (pain.remarksOn.length > 0) return sayWaits(pain, speaker);
    return speaker.say(stops.length > 0 ? 'changeStopWaits' : 'changeNothingPain');
  }
  switch (overall.state.kind) {
    case 'none':
      return speaker.say('changeNothingSeen');
    case 'provisional':
      return remarksLeft > 0 ? speaker.say('changeNothingOften') : speaker.say('changeNothingYet');
    case 'graded':
      if (findings.length > 0) return speaker.say('changeInPlan');
      return remarksLeft > 0 ? speaker.say('changeNothingOften') : speaker.say('changeNothing');
  }
}

function sayIntro(plan: LetterPlan, speaker: Speaker): string {
  const count = plan.priorities.length;
  if (count === 0) return sayNothingToChange(plan, speaker);
  if (plan.priorities.every(({ severity }) => severity === 'stop')) return speaker.say('changeStop');
  if (count === 1 && plan.priorities.some(({ urgent }) => urgent)) return speaker.say('changeStop');
  return speaker.say(plan.choice?.kind === 'inOrder' ? 'changeInOrder' : 'changeIntro', { count });
}

function writeChoice({ choice, priorities }: LetterPlan, speaker: Speaker): Block[] {
  const say = (): string => {
    switch (choice?.kind) {
      case 'inOrder':
        return speaker.say('choiceInOrder');
      case 'free':
        return speaker.say('choiceOrder', { count: priorities.length });
      case 'cue':
        return speaker.say('choiceCue', { other: choice.other.replace(/\.$/, '') });
      case undefined:
        return '';
    }
  };
  const said = say();
  return said === '' ? [] : [{ kind: 'paragraph', id: 'change-choice', inlines: [text(said)] }];
}

/** What the sheet holds besides. It can wait only where nothing said before it can't. */
function sayLater({ remarksLeft, priorities, stops, pain }: LetterPlan, speaker: Speaker): string {
  const count = remarksLeft;
  if (pain !== null || stops.length > 0 || priorities.some(({ urgent }) => urgent)) {
    return speaker.say('changeOnSheet', { count, more: priorities.length === 0 ? 0 : 1 });
  }
  return speaker.say(priorities.length === 0 ? 'changeOnlyLater' : 'changeLater', { count });
}

/** What to change: at most three things, each with what was seen, why, a cue, a drill and how we'll know. */
export function writePriorities(plan: LetterPlan, speaker: Speaker, manner: Manner): Block[] {
  const line = (id: string, said: string): Block => ({ kind: 'paragraph', id, inlines: [text(said)] });
  const { pain } = plan;
  const waits = plan.priorities.length > 0 && pain !== null && pain.remarksOn.length > 0;
  const ids = paragraphIds('priority', plan.priorities);
  return [
    { kind: 'heading', level: 2, id: 'change', text: speaker.say('changeTitle') },
    ...(waits ? [line('change-waits', sayWaits(pain, speaker))] : []),
    line('change-intro', sayIntro(plan, speaker)),
    ...eachOnce(
      plan.priorities.flatMap((priority, index) => {
        const places = placesOf(priority, plan, speaker);
        return writePriority(priority, { id: ids[index] ?? '', number: index + 1, places }, manner, speaker);
      }),
    ),
    ...writeChoice(plan, speaker),
    ...(plan.remarksLeft === 0 ? [] : [line('change-later', sayLater(plan, speaker))]),
  ];
}
