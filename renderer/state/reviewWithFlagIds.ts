import type { Result } from '../../electron/contract/requests.ts';
import type { Review } from '../../engine/review/review.ts';

/** The review with a name for every flag: those of the library have one, a flag without one is named by its place. */
export function reviewWithFlagIds(answer: Result<'review.get'>['review']): Review {
  return {
    ...answer,
    entries: answer.entries.map((entry) => ({
      ...entry,
      flags: entry.flags.map((flag, index) => ({ ...flag, id: flag.id ?? `${entry.id}-${index + 1}` })),
    })),
  };
}
