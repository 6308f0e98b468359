import { beforeEach, describe, expect, it, onTestFinished } from 'vitest';
import type { SessionSummary } from '../../../electron/contract/desk.ts';
import { listen } from '../../../renderer/listen.ts';
import { deskState } from '../../../renderer/state/deskState.ts';
import { fakeRackside } from '../harness/fakeRackside.ts';
import { startAfresh } from '../harness/startAfresh.ts';
import { summaryOf, traineeOf } from '../harness/summaries.ts';

const finished = (id: string, date: string): SessionSummary => summaryOf({ id, date });
const unfinished = (id: string, date: string): SessionSummary => summaryOf({ id, date, mark: '', coverage: 0 });

/** A desk of two pages: what is unfinished, and the newest that is finished; then the rest. */
const pages: Readonly<Record<string, { sessions: SessionSummary[]; next: string | null }>> = {
  first: { sessions: [unfinished('open', '2026-01-05'), finished('new', '2026-03-09')], next: 'second' },
  second: { sessions: [finished('old', '2026-02-01')], next: null },
};

function desk() {
  const rackside = fakeRackside({
    'desk.sessions': ({ list, after }) =>
      list === 'desk' ? (pages[after ?? 'first'] ?? { sessions: [], next: null }) : { sessions: [], next: null },
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
    await deskState.getState().loadMore('desk');
    expect(ids()).toEqual(['new', 'old', 'open']);
    expect(deskState.getState().next).toEqual({ desk: null, secondLooks: null });
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
    come(unfinished('added', '2025-12-01'));
    come(finished('ancient', '2019-01-01'));
    expect(ids()).toEqual(['new', 'open', 'added']);
    await deskState.getState().loadMore('desk');
    come(finished('ancient', '2019-01-01'));
    expect(ids()).toEqual(['new', 'old', 'open', 'added', 'ancient']);
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
