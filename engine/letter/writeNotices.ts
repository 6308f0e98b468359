import type { Block, Inline } from '../document/document.ts';
import { strong, text } from '../document/inlines.ts';
import { sentence } from '../document/tidy.ts';
import type { Caution } from '../exercises/caution.ts';
import type { LetterPlan } from './letterPlan.ts';
import { sayAround, sayWhere } from './sayWhere.ts';
import type { Speaker } from './speaker.ts';

const plainCaution = (caution: Caution): Inline[] => [text(sentence(caution.text))];

const titledCaution = (caution: Caution): Inline[] => [
  strong(sentence(caution.topic)),
  text(' '),
  text(sentence(caution.text)),
];

/** What was unsafe, and the trainee's own words on pain: before anything else is said. */
export function writeFirstNotices(plan: LetterPlan, speaker: Speaker): Block[] {
  const { words } = speaker;
  const blocks: Block[] = [];
  if (plan.stops.length > 0) {
    const seen = plan.stops.map((stop) =>
      sayAround(words.stopSeen, sayWhere(stop.sightings, speaker), speaker, {
        fault: stop.fault?.name ?? stop.criterionName,
      }),
    );
    const advice = plan.cautions.stop.map(plainCaution);
    blocks.push({
      kind: 'notice',
      id: 'stop',
      title: words.stopTitle,
      paragraphs: [...seen, ...(advice.length === 0 ? [[text(words.stopAdvice)]] : advice)],
    });
  }
  if (plan.painNote !== '') {
    blocks.push({
      kind: 'notice',
      id: 'pain',
      title: words.painTitle,
      paragraphs: [
        [text(speaker.say(words.painQuote, { words: plan.painNote }))],
        [text(words.painDefer)],
        ...plan.cautions.pain.map(plainCaution),
      ],
    });
  }
  return blocks;
}

/** The cautions that go with every letter, a minor's or the exercises done. */
export function writeCautions(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.cautions.other.length === 0) return [];
  return [
    {
      kind: 'notice',
      id: 'cautions',
      title: speaker.words.cautionsTitle,
      paragraphs: plan.cautions.other.map(titledCaution),
    },
  ];
}
