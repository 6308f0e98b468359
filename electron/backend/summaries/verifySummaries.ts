import { isDeepStrictEqual } from 'node:util';
import type { JudgingData } from '../catalogue/loadCatalogue.ts';
import { all } from '../store/connection.ts';
import type { Library } from '../store/library.ts';
import { readKeptSummary } from '../store/summaries.ts';
import { freshSummary } from './freshSummary.ts';

/** Compares each kept summary with one computed anew; one sentence for all that differ. */
export function verifySummaries({ reading }: Library, judging: JudgingData): string[] {
  const ids = all<{ id: string }>(reading, 'SELECT id FROM session').map(({ id }) => id);
  const wrong = ids.filter((id) => {
    const fresh = freshSummary(reading, id, judging);
    const kept = readKeptSummary(reading, id);
    // One made from other judging data is only old.
    if (kept !== undefined && kept.judgingSha256 !== fresh.judgingSha256) return false;
    return !isDeepStrictEqual(kept, fresh);
  });
  if (wrong.length === 0) return [];
  const of = wrong.length === 1 ? 'of 1 session' : `of ${wrong.length} sessions`;
  return [`What the desk shows ${of} is not what its flags and clips say.`];
}
