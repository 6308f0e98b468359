import type { Block } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Change, LetterPlan } from './letterPlan.ts';
import type { Speaker } from './speaker.ts';

const mostChanges = 5;

function sayChange({ kind, fault, exercise, before, now }: Change, speaker: Speaker): string {
  const reps = (load: Change['now']): string =>
    load === null
      ? ''
      : speaker.say('sinceReps', { reps: speaker.whole(load.reps), of: speaker.say('repCount', { count: load.of }) });
  const values = { fault, exercise, before: reps(before), now: reps(now) };
  switch (kind) {
    case 'gone':
      return speaker.say('sinceGone', values);
    case 'back':
      return speaker.say('sinceBack', values);
    case 'better':
      return speaker.say('sinceBetter', values);
    case 'worse':
      return speaker.say('sinceWorse', values);
  }
}

/** What became of last time's faults, as a short list. */
export function writeChanges(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.changes.length === 0) return [];
  const items = plan.changes.slice(0, mostChanges).map((change) => [text(sayChange(change, speaker))]);
  return [
    { kind: 'heading', level: 2, id: 'since', text: speaker.say('sinceTitle') },
    { kind: 'list', id: 'since-list', ordered: false, items },
  ];
}
