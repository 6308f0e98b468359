import * as v from 'valibot';
import type { SessionSummary } from '../../contract/desk.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { Context } from '../context/context.ts';
import { findSummary, readSummaryPage, type SummaryKey, type SummaryList } from '../store/summaries.ts';
import { listTrainees, traineeOf } from '../store/trainees.ts';
import { renewSummaries } from '../summaries/keepSummaries.ts';
import type { Handler } from './handler.ts';

export const listDeskSessions: Handler<'desk.sessions'> = (context, asked) => sessionPage(context, asked);

export const getDeskSession: Handler<'desk.session'> = (context, { sessionId }) => {
  const { reading, folder } = context.library();
  const summary = findSummary(reading, folder, sessionId);
  if (summary !== null) return summary;
  throw new ProblemError('not-found', 'sessionGone');
};

export const listDeskTrainees: Handler<'desk.trainees'> = (context) =>
  listTrainees(context.library().reading).map((row) => ({
    ...traineeOf(row),
    names: row.names,
    notes: row.notes,
    archived: row.archived_at !== null,
  }));

const cursorSchema = v.strictTuple([v.number(), v.string(), v.string(), v.string()]);

type PageAsked = { readonly list: SummaryList; readonly after: string | null; readonly limit: number };

/** One page of a list of sessions. Summaries that are out of date are made again first. */
export function sessionPage(
  context: Context,
  { list, after, limit }: PageAsked,
): { sessions: SessionSummary[]; next: string | null } {
  const library = context.library();
  const { reading, folder } = library;
  const { sessions, next, rows } = readSummaryPage(reading, folder, { list, after: keyOf(after), limit });
  const stale = rows.filter(({ rubricVersion, judgingSha256 }) => context.fingerprint(rubricVersion) !== judgingSha256);
  const staleIds = new Set(stale.map(({ id }) => id));
  renewSummaries(library, context, [...staleIds]);
  return {
    sessions: sessions.map((summary) =>
      staleIds.has(summary.id) ? (findSummary(reading, folder, summary.id) ?? summary) : summary,
    ),
    next: next === null ? null : JSON.stringify(next),
  };
}

function keyOf(after: string | null): SummaryKey | null {
  if (after === null) return null;
  try {
    return v.parse(cursorSchema, JSON.parse(after));
  } catch {
    throw new ProblemError('bad-request', 'noNextPage');
  }
}
