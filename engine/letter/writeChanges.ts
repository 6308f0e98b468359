import type { Block } from '../document/document.ts';
import { text } from '../document/inlines.ts';
import type { Change, LetterPlan } from './letterPlan.ts';
import type { Speaker } from './speaker.ts';

const mostChanges = 5;

function sayChange({ kind, fault, exercise, before, now }: Change, speaker: Speaker): string {
  const { words } = speaker;
  const reps = (load: Change['now']): string =>
    load === null
      ? ''
      : speaker.say(words.sinceReps, { reps: speaker.whole(load.reps), of: speaker.count(words.repCount, load.of) });
  const values = { fault, exercise, before: reps(before), now: reps(now) };
  switch (kind) {
    case 'gone':
      return speaker.say(words.sinceGone, values);
    case 'back':
      return speaker.say(words.sinceBack, values);
    case 'better':
      return speaker.say(words.sinceBetter, values);
    case 'worse':
      return speaker.say(words.sinceWorse, values);
  }
}

/** What became of last time's faults, as a short list. */
export function writeChanges(plan: LetterPlan, speaker: Speaker): Block[] {
  if (plan.changes.length === 0) return [];
  const items = plan.changes.slice(0, mostChanges).map((change) => [text(sayChange(change, speaker))]);
  return [
    { kind: 'heading', level: 2, id: 'since', text: speaker.words.sinceTitle },
    { kind: 'list', id: 'since-list', ordered: false, items },
  ];
}
