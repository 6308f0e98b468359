import { type Block, type Inline, strong, text } from '../document/document.ts';
import { sentence } from '../document/words.ts';
import type { Caution } from '../exercises/catalogue.ts';
import type { LetterPlan } from './letterPlan.ts';
import { type Speaker, sayWhere } from './speaker.ts';

const plainCaution = (caution: Caution): Inline[] => [text(sentence(caution.text))];

const titledCaution = (caution: Caution): Inline[] => [
  strong(sentence(caution.topic)),
  text(' '),
  text(sentence(caution.text)),
];

/** What was unsafe, and the trainee's own words on pain: before anything else is said. */
export function writeFirstNotices(plan: LetterPlan, speaker: Speaker): Block[] {
  const blocks: Block[] = [];
  if (plan.stops.length > 0) {
    const seen = plan.stops.map((stop) =>
      speaker.sayAround(
        'stopSeen',
        { where: sayWhere(stop.sightings, speaker) },
        {
          fault: stop.fault?.name ?? stop.criterionName,
        },
      ),
    );
    const advice = plan.cautions.stop.map(plainCaution);
    blocks.push({
      kind: 'notice',
      id: 'stop',
      title: speaker.say('stopTitle'),
      paragraphs: [...seen, ...(advice.length === 0 ? [[text(speaker.say('stopAdvice'))]] : advice)],
    });
  }
  if (plan.painNote !== '') {
    blocks.push({
      kind: 'notice',
      id: 'pain',
      title: speaker.say('painTitle'),
      paragraphs: [
        [text(speaker.say('painQuote', { words: plan.painNote }))],
        [text(speaker.say('painDefer'))],
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
      title: speaker.say('cautionsTitle'),
      paragraphs: plan.cautions.other.map(titledCaution),
    },
  ];
}
