import type { RacksideDocument } from '../document/document.ts';
import { type Letter, paragraphIds } from './letter.ts';
import type { LetterPlan, Priority } from './letterPlan.ts';

/** Of things that still stand, the choice: between them, or between the two cues of the one that is left. */
function choiceAmong(kept: readonly Priority[], { choice }: LetterPlan): LetterPlan['choice'] {
  const [first, second] = kept;
  if (choice === null || second !== undefined) return choice;
  return first === undefined || first.urgent || first.otherCue === null ? null : { kind: 'cue', other: first.otherCue };
}

const counting: ReadonlySet<string> = new Set(['change-intro', 'change-choice']);

/**
 * A letter that counts only the things to change that still stand in `document`, the letter as the coach shaped it: one whose paragraphs
 * were all left out has no heading there. The same object where all of them stand. `write` words a plan.
 */
export function recounted(
  letter: Letter,
  plan: LetterPlan,
  { blocks }: RacksideDocument,
  write: (plan: LetterPlan) => Letter,
): Letter {
  const ids = paragraphIds('priority', plan.priorities);
  const standing = new Set(blocks.map(({ id }) => id));
  const keptIds = ids.filter((id) => standing.has(id));
  if (keptIds.length === ids.length) return letter;
  const kept = plan.priorities.filter((_, at) => standing.has(ids[at] ?? ''));
  const fresh = write({ ...plan, priorities: kept, choice: choiceAmong(kept, plan) }).sections.flatMap(
    (section) => section.blocks,
  );
  const freshIds = new Map(keptIds.map((id, at) => [id, paragraphIds('priority', kept)[at] ?? '']));
  return {
    ...letter,
    sections: letter.sections.map((section) => ({
      ...section,
      blocks: section.blocks.flatMap((block) => {
        if (counting.has(block.id)) return kept.length === 0 ? [] : fresh.filter(({ id }) => id === block.id);
        const other = fresh.find(({ id }) => id === freshIds.get(block.id));
        return block.kind === 'heading' && other?.kind === 'heading' ? [{ ...block, text: other.text }] : [block];
      }),
    })),
  };
}
