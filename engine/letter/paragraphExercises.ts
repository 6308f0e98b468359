import { paragraphIds } from './letter.ts';
import type { LetterPlan } from './letterPlan.ts';
import type { Speaker } from './speaker.ts';

/** Names of exercises as they stand in a sentence, as a list. */
const inSentence = (names: readonly string[], speaker: Speaker): string =>
  speaker.list([...new Set(names)].map(speaker.within));

/** All exercises of a session, as they stand in a sentence. */
export const sessionExercises = (plan: LetterPlan, speaker: Speaker): string =>
  inSentence(
    plan.entries.map(({ exercise }) => exercise),
    speaker,
  );

/**
 * Which exercises a paragraph or heading speaks of, by the beginning of its id: keeps, priorities, notes on grades. What is not
 * in it speaks of the whole session.
 */
export function paragraphExercises(plan: LetterPlan, speaker: Speaker): (paragraph: string) => string {
  const named = (section: string, about: readonly { readonly key: string; readonly names: readonly string[] }[]) =>
    paragraphIds(section, about).map((id, at) => [id, inSentence(about[at]?.names ?? [], speaker)] as const);
  const known = [
    ...named(
      'keep',
      plan.keeps.map(({ key, sightings }) => ({ key, names: sightings.map(({ exercise }) => exercise) })),
    ),
    ...named(
      'priority',
      plan.priorities.map(({ key, exercises }) => ({ key, names: exercises })),
    ),
    ...plan.entries.map(
      ({ entryId, exercise }) => [`exercises-note-${entryId}`, inSentence([exercise], speaker)] as const,
    ),
  ].sort(([a], [b]) => b.length - a.length);
  return (paragraph) => known.find(([id]) => paragraph === id || paragraph.startsWith(`${id}-`))?.[1] ?? '';
}
