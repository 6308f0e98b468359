import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import type { SessionSummary } from '../../../electron/contract/desk.ts';
import { listen } from '../../../renderer/listen.ts';
import { deskState, dueInOrder } from '../../../renderer/state/deskState.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf, traineeOf } from '../harness/summaries.ts';

const finished = (id: string, date: string): SessionSummary => summaryOf({ id, date, state: 'sent' });
const due = (id: string, date: string, cameAt = `${date}T20:00:00.000Z`): SessionSummary =>
  summaryOf({ id, date, cameAt, mark: '', coverage: 0, state: 'new' });

/** A desk with one session to do, and two pages of what is done. */
const pages: Readonly<Record<string, { sessions: SessionSummary[]; next: string | null }>> = {
  first: { sessions: [finished('new', '2026-03-09')], next: 'second' },
  second: { sessions: [finished('old', '2026-02-01')], next: null },
};
const nothing = { sessions: [], next: null };

function desk() {
  const rackside = fakeRackside({
    'desk.sessions': ({ list, after }) =>
      list === 'done'
        ? (pages[after ?? 'first'] ?? nothing)
        : { ...nothing, sessions: list === 'due' ? [due('open', '2026-01-05')] : [] },
    'desk.trainees': () => [traineeOf()],
    'desk.session': ({ sessionId }) => finished(sessionId, '2020-01-01'),
  });
  onTestFinished(listen());
  return rackside;
}

const ids = (): readonly string[] => deskState.getState().sessions.map(({ id }) => id);

describe('the desk', () => {
  beforeEach(() => startAfresh(deskState));

  it('is read a page at a time', async () => {
    desk();
    await deskState.getState().refresh();
    expect(ids()).toEqual(['new', 'open']);
    await deskState.getState().loadMore('done');
    expect(ids()).toEqual(['new', 'old', 'open']);
    expect(deskState.getState().next).toEqual({ due: null, done: null, secondLooks: null });
  });

  it('puts what changed in its place, and asks for nothing', async () => {
    const { asked, emit } = desk();
    await deskState.getState().refresh();
    const before = asked.length;
    const summary = { ...finished('open', '2026-01-05'), flags: 9 };
    emit({ name: 'sessionChanged', data: { sessionId: 'open', summary } });
    expect(deskState.getState().sessions.find(({ id }) => id === 'open')).toBe(summary);
    emit({ name: 'sessionChanged', data: { sessionId: 'new', summary: null } });
    expect(ids()).toEqual(['open']);
    expect(asked).toHaveLength(before);
  });

  it('takes a new session in where it belongs to what was read, and leaves it to its page where it does not', async () => {
    const { emit } = desk();
    await deskState.getState().refresh();
    const come = (summary: SessionSummary): void =>
      emit({ name: 'sessionChanged', data: { sessionId: summary.id, summary } });
    come(due('added', '2025-12-01'));
    come(finished('ancient', '2019-01-01'));
    expect(ids()).toEqual(['new', 'open', 'added']);
    await deskState.getState().loadMore('done');
    come(finished('ancient', '2019-01-01'));
    expect(ids()).toEqual(['new', 'old', 'open', 'added', 'ancient']);
  });

  it('puts what is due in the order it is done: what came first first, what waits for its clips last', async () => {
    const waiting = summaryOf({ id: 'waiting', clips: 0, cameAt: '', state: 'new' });
    const late = due('late', '2026-03-01', '2026-03-02T08:00:00.000Z');
    const early = due('early', '2026-03-09', '2026-03-01T08:00:00.000Z');
    const sessions = [waiting, late, finished('new', '2026-03-09'), early];
    expect(dueInOrder(sessions).map(({ id }) => id)).toEqual(['early', 'late', 'waiting']);
  });

  it('reads one session that is on no page yet', async () => {
    const { askedFor } = desk();
    await deskState.getState().refresh();
    await deskState.getState().include('far');
    await deskState.getState().include('new');
    expect(ids()).toEqual(['new', 'open', 'far']);
    expect(askedFor('desk.session')).toEqual([{ sessionId: 'far' }]);
  });
});
