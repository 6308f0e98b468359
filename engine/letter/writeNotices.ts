import { type Block, type Inline, strong, text, upperFirstInline } from '../document/document.ts';
import { sentence } from '../document/words.ts';
import type { Caution } from '../exercises/catalogue.ts';
import type { LetterPlan, PlannedPain } from './letterPlan.ts';
import { sayWhere } from './sayWhere.ts';
import type { Speaker } from './speaker.ts';

const plainCaution = (caution: Caution): Inline[] => [text(sentence(caution.text))];

const titledCaution = (caution: Caution): Inline[] => [
  strong(sentence(caution.topic)),
  text(' '),
  text(sentence(caution.text)),
];

/** What to do about what was unsafe: no light sets of a lift that pain holds back. */
function stopAdvice({ stops, pain, cautions }: LetterPlan, speaker: Speaker): Inline[][] {
  const lifts = new Set(stops.flatMap(({ exercises }) => exercises));
  if (pain?.held.some(({ exercise }) => lifts.has(exercise))) return [[text(speaker.say('stopAfterPain'))]];
  if (lifts.size > 1) return [[text(speaker.say('stopAdviceMany'))]];
  // The caution speaks of one lift.
  return cautions.stop.length > 0 ? cautions.stop.map(plainCaution) : [[text(speaker.say('stopAdvice'))]];
}

/** What was unsafe: before the grade. */
export function writeUnsafe(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.stops.length === 0) return [];
  const seen = plan.stops.map((stop) => {
    const where = sayWhere(stop.sightings, speaker, plan.oneLift ? 'none' : 'exercise');
    const said =
      stop.fault === null
        ? speaker.sayAround('stopSeenPlain', { where }, { criterion: speaker.within(stop.criterionName) })
        : speaker.sayAround('stopSeen', { where }, { fault: stop.fault.name });
    // What is asked to change has its note there.
    const [note] = plan.priorities.some(({ key }) => key === stop.key) ? [] : stop.notes;
    return upperFirstInline(note === undefined ? said : [...said, text(` ${sentence(note)}`)]);
  });
  return [
    {
      kind: 'notice',
      id: 'stop',
      title: speaker.say('stopTitle'),
      paragraphs: [...seen, ...stopAdvice(plan, speaker)],
    },
  ];
}

/** What pain asks of the lifts that load the area. */
function sayPainRule({ held, holdsAll, step, mild, over }: PlannedPain, speaker: Speaker): string {
  if (over) return speaker.say('painOver');
  if (held.length === 0 && !holdsAll) return speaker.say('painElsewhere');
  const lifts =
    holdsAll && (held.length === 0 || held.length > mostNamed)
      ? speaker.say('painEveryLift')
      : speaker.lifts(held.map(({ exercise }) => exercise));
  if (step === 'stop') return speaker.say('painStop', { lifts });
  return speaker.say(mild ? 'painMild' : 'painSettle', { lifts });
}

const mostNamed = 4;

const urgent = { none: [], soon: ['painSoon'], emergency: ['painEmergency'] } as const;

function painNotice(pain: PlannedPain | null, speaker: Speaker, cautions: readonly Caution[]): Block[] {
  if (pain === null) return [];
  return [
    {
      kind: 'notice',
      id: 'pain',
      title: speaker.say('painTitle'),
      paragraphs: [
        [text(speaker.say('painQuote', { words: pain.words }))],
        ...urgent[pain.redFlag].map((id) => [text(speaker.say(id))]),
        [text(sayPainRule(pain, speaker))],
        [text(speaker.say('painDefer'))],
        ...cautions.map(plainCaution),
      ],
    },
  ];
}

/** The trainee's own words on pain, what they ask for, and whom to ask: before anything else is said. */
export const writePain = ({ pain, cautions }: LetterPlan, speaker: Speaker): Block[] =>
  painNotice(pain, speaker, cautions.pain);

/** Pain and what was unsafe, in few words: for the top of whatever else is written of the session. */
export const writeTopNotices = (plan: LetterPlan, speaker: Speaker): Block[] => [
  ...painNotice(plan.pain, speaker, []),
  ...writeUnsafe(plan, speaker),
];

/** Cautions, each under its topic; nothing without any. */
export function cautionsNotice(cautions: readonly Caution[], speaker: Speaker): Block[] {
  if (cautions.length === 0) return [];
  const paragraphs = cautions.map(titledCaution);
  return [{ kind: 'notice', id: 'cautions', title: speaker.say('cautionsTitle'), paragraphs }];
}

/** The cautions of a letter that its notices on top don't say. */
export const writeCautions = ({ cautions }: LetterPlan, speaker: Speaker): Block[] =>
  cautionsNotice(cautions.other, speaker);

/** All cautions that a session calls for: for the end of a document whose top says only `writeTopNotices`. */
export const writeAllCautions = ({ cautions }: LetterPlan, speaker: Speaker): Block[] =>
  cautionsNotice([...cautions.pain, ...cautions.stop, ...cautions.other], speaker);

/** The same in one paragraph, without those that go with everything: where one page is all there is. */
export function writeOwnCautions({ cautions }: LetterPlan, speaker: Speaker): Block[] {
  const own = [...cautions.pain, ...cautions.stop, ...cautions.other].filter(({ applies }) => applies !== 'always');
  if (own.length === 0) return [];
  const line = own.flatMap((caution, at) => [...(at === 0 ? [] : [text(' ')]), ...titledCaution(caution)]);
  return [{ kind: 'notice', id: 'cautions', title: speaker.say('cautionsTitle'), paragraphs: [line] }];
}
