import { type Block, emphasis, type Inline, plainText, strong, text } from '../document/document.ts';
import { sentence, upperFirst } from '../document/words.ts';
import { paragraphIds, type Stills } from './letter.ts';
import type { LetterPlan, Priority } from './letterPlan.ts';
import { type Speaker, sayWhere } from './speaker.ts';

const mostNotes = 2;

const nameOf = (priority: Priority): string => priority.fault?.name ?? priority.criterionName;

/** What was seen, and the coach's own words where they add to it. */
function saySeen(priority: Priority, speaker: Speaker): Inline[] {
  const seen = sentence(priority.fault?.seen ?? '');
  const notes = priority.notes
    .map(sentence)
    .filter((note) => note.toLowerCase() !== seen.toLowerCase())
    .slice(0, mostNotes);
  const [what = '', ...others] = seen === '' ? notes : [seen, ...notes];
  const where = sayWhere(priority.sightings, speaker);
  const first =
    what === ''
      ? speaker.sayAround('seenPlain', { where }, { weight: speaker.say('weight', { weight: priority.weight }) })
      : speaker.sayAround('seen', { where }, { what });
  return others.length === 0 ? first : [...first, text(` ${others.join(' ')}`)];
}

function sayWhy(priority: Priority, speaker: Speaker): string {
  if (priority.fault === null) return '';
  const why = sentence(priority.fault.why);
  const source = priority.fault.source.trim();
  return source === '' ? why : speaker.say('why', { why: why.replace(/\.$/, ''), source });
}

function sayProof(priority: Priority, speaker: Speaker): string {
  return priority.fault === null
    ? speaker.say('proofPlain', { criterion: speaker.within(priority.criterionName) })
    : sentence(priority.fault.proof);
}

/** What is said of a priority, in this order. */
export const priorityParts = ['seen', 'why', 'cue', 'drill', 'proof'] as const;
type Part = (typeof priorityParts)[number];

/** How priorities are written: with pictures where there are some, and which parts of what is said. */
type Manner = { readonly stills: Stills; readonly parts: readonly Part[] };

/** The picture of what was seen; none where no remark has a still. */
function writeStill(priority: Priority, id: string, stills: Stills, speaker: Speaker): Block[] {
  const shown = priority.remarks.find(({ flagId }) => stills.has(flagId));
  const still = shown === undefined ? undefined : stills.get(shown.flagId);
  if (shown === undefined || still === undefined) return [];
  const where = upperFirst(plainText(sayWhere([shown.sighting], speaker)));
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

/** Which priority of the letter it is: the id of its heading, and its number. */
type Ordinal = { readonly id: string; readonly number: number };

function writePriority(
  priority: Priority,
  { id, number }: Ordinal,
  { stills, parts }: Manner,
  speaker: Speaker,
): Block[] {
  const title = speaker.say(priority.exercises.length === 1 ? 'priority' : 'priorityAcross', {
    number: speaker.whole(number),
    fault: nameOf(priority),
    exercise: priority.exercises[0] ?? '',
  });
  const paragraph = (part: Part, label: string, inlines: readonly Inline[]): Block[] =>
    !parts.includes(part) || inlines.every((inline) => inline.text === '')
      ? []
      : [{ kind: 'paragraph', id: `${id}-${part}`, inlines: [strong(label), text(' '), ...inlines] }];
  const cue = priority.cue === '' ? '' : speaker.say('cue', { cue: sentence(priority.cue) });
  return [
    { kind: 'heading', level: 3, id, text: title },
    ...writeStill(priority, id, stills, speaker),
    ...paragraph('seen', speaker.say('seenLabel'), saySeen(priority, speaker)),
    ...paragraph('why', speaker.say('whyLabel'), [text(sayWhy(priority, speaker))]),
    ...paragraph('cue', speaker.say('cueLabel'), [
      emphasis(cue),
      ...(priority.cueIsNew ? [text(` ${speaker.say('cueIsNew')}`)] : []),
    ]),
    ...paragraph('drill', speaker.say('drillLabel'), [text(sentence(priority.fault?.drill ?? ''))]),
    ...paragraph('proof', speaker.say('proofLabel'), [text(sayProof(priority, speaker))]),
  ];
}

/** Leaves out a paragraph that an earlier priority has already said word for word. */
function eachOnce(blocks: readonly Block[]): Block[] {
  const said = new Set<string>();
  return blocks.filter((block) => {
    if (block.kind !== 'paragraph') return true;
    const line = plainText(block.inlines);
    if (said.has(line)) return false;
    said.add(line);
    return true;
  });
}

function sayNothingToChange({ overall, remarksLeft, painNote }: LetterPlan, speaker: Speaker): string {
  if (painNote !== '' && overall.state.kind !== 'none') return speaker.say('changeNothingPain');
  switch (overall.state.kind) {
    case 'none':
      return speaker.say('changeNothingSeen');
    case 'provisional':
      return remarksLeft > 0 ? speaker.say('changeNothingOften') : speaker.say('changeNothingYet');
    case 'graded':
      return remarksLeft > 0 ? speaker.say('changeNothingOften') : speaker.say('changeNothing');
  }
}

function sayIntro(plan: LetterPlan, speaker: Speaker): string {
  const count = plan.priorities.length;
  if (count === 0) return sayNothingToChange(plan, speaker);
  return plan.priorities[0]?.weight === 'stop'
    ? speaker.say('changeStop')
    : speaker.say('changeIntro', { count: count });
}

function writeChoice({ choice }: LetterPlan, speaker: Speaker): Block[] {
  if (choice === null) return [];
  const said =
    choice.kind === 'order'
      ? speaker.say('choiceOrder')
      : speaker.say('choiceCue', { other: choice.other.replace(/\.$/, '') });
  return [{ kind: 'paragraph', id: 'change-choice', inlines: [text(said)] }];
}

/** What to change: at most three things, each with what was seen, why, a cue, a drill and how we'll know. */
export function writePriorities(plan: LetterPlan, speaker: Speaker, manner: Manner): Block[] {
  const later: Block[] =
    plan.remarksLeft === 0
      ? []
      : [
          {
            kind: 'paragraph',
            id: 'change-later',
            inlines: [
              text(
                speaker.say(plan.priorities.length === 0 ? 'changeOnlyLater' : 'changeLater', {
                  count: plan.remarksLeft,
                }),
              ),
            ],
          },
        ];
  const ids = paragraphIds('priority', plan.priorities);
  return [
    { kind: 'heading', level: 2, id: 'change', text: speaker.say('changeTitle') },
    { kind: 'paragraph', id: 'change-intro', inlines: [text(sayIntro(plan, speaker))] },
    ...eachOnce(
      plan.priorities.flatMap((priority, index) =>
        writePriority(priority, { id: ids[index] ?? '', number: index + 1 }, manner, speaker),
      ),
    ),
    ...writeChoice(plan, speaker),
    ...later,
  ];
}
