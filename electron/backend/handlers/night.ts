import { latenessOf } from '../../../engine/night/lateness.ts';
import { paceOf, type WorkAct } from '../../../engine/night/pace.ts';
import type { ActionId } from '../../../engine/wording/sayAction.ts';
import { localDay } from '../../contract/localDay.ts';
import { findNextDue, listDue, listRecentActs, type RecentAct } from '../store/night.ts';
import { readSettings } from '../store/settings.ts';
import { messageOfText } from '../store/storedMessage.ts';
import { findSummary } from '../store/summaries.ts';
import type { Handler } from './handler.ts';

/** More sessions than anybody does in a night; what lies behind them is not counted. */
const mostSessions = 300;
const mostActs = 2000;

export const findNext: Handler<'night.next'> = async (context, { after }) => {
  // A session whose summary is old may be due without the list knowing of it.
  await context.summariesRenewed();
  const { reading, folder } = context.library();
  const next = findNextDue(reading, after);
  return { session: next === undefined ? null : findSummary(reading, folder, next) };
};

export const tellLeft: Handler<'night.left'> = async (context) => {
  await context.summariesRenewed();
  const { reading } = context.library();
  const now = new Date();
  const today = localDay(now);
  const { daysPromised } = readSettings(reading);
  const due = listDue(reading, mostSessions + 1);
  const counted = due.slice(0, mostSessions);
  const isLate = (cameAt: string): boolean =>
    latenessOf(localDay(new Date(cameAt)), today, daysPromised).kind === 'late';
  const dayStartMs = new Date(now.getFullYear(), now.getMonth(), now.getDate()).getTime();
  return {
    sessions: counted.length,
    late: counted.filter((row) => isLate(row.came_at)).length,
    clips: counted.reduce((sum, row) => sum + row.clips_left, 0),
    more: due.length > mostSessions,
    pace: paceOf(workOf(listRecentActs(reading, mostActs)), dayStartMs),
  };
};

/** What the app does by itself, at any hour: nobody is at work then. */
const doneByItself: ReadonlySet<string> = new Set<ActionId>([
  'clipAdded',
  'clipsAdded',
  'repsMeasured',
  'sessionImported',
]);

const workOf = (acts: readonly RecentAct[]): WorkAct[] =>
  acts
    .filter(({ name }) => !doneByItself.has(messageOfText(name).id))
    .map(({ at, clip_id }) => ({ atMs: Date.parse(at), clipId: clip_id }));
