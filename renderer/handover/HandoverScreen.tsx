import { ArrowLeft, CalendarClock, PackageOpen } from 'lucide-react';
import { useEffect, useMemo, useRef, useState } from 'react';
import { CommandButton } from '../commands/CommandButton.tsx';
import { availabilityOf, runCommand } from '../commands/command.ts';
import { type NightContext, nextToDo } from '../commands/nightCommands.ts';
import { ScreenCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { deskState } from '../state/deskState.ts';
import { handoverState } from '../state/handoverState.ts';
import { isUnderWay, jobsState } from '../state/jobsState.ts';
import { goToNextDue } from '../state/night.ts';
import { screenState } from '../state/screenState.ts';
import { sayHandover } from '../words/sayHandover.ts';
import { HandoverJobs } from './Deliveries.tsx';
import { HandoverForm } from './HandoverForm.tsx';
import { SessionsToHandOver } from './SessionsToHandOver.tsx';

/** How many are due, of those read so far. */
const dueWords = (count: number, next: string | null): string =>
  sayHandover(next === null ? 'due' : 'dueSoFar', { count });

const dueNow = (): ReadonlySet<string> =>
  new Set((handoverState.getState().sessions ?? []).filter(({ due }) => due).map(({ sessionId }) => sessionId));

const commands = [nextToDo];

type HandoverScreenProps = { readonly sessionIds: readonly string[] | null; readonly from: string | null };

/** What leaves the desk: which sessions, how, where to, and what was handed over before. */
export function HandoverScreen({ sessionIds, from }: HandoverScreenProps) {
  const sessions = handoverState((state) => state.sessions);
  const next = handoverState((state) => state.next);
  const onDesk = deskState((state) => state.sessions);
  const [picked, setPicked] = useState<ReadonlySet<string> | null>(sessionIds === null ? null : new Set(sessionIds));
  const form = useRef<HTMLFormElement>(null);
  const [panel, setPanel] = useCommandPanel();
  useEffect(() => {
    void deskState.getState().refresh();
    void jobsState.getState().refresh();
    void (async () => {
      const { refresh, include } = handoverState.getState();
      await refresh();
      for (const id of sessionIds ?? []) await include(id);
      // Chosen once, so that a session that has just been handed over doesn't lose its tick.
      setPicked((before) => before ?? dueNow());
    })();
  }, [sessionIds]);
  const rows = useMemo(
    () =>
      (sessions ?? []).map((row) => ({
        ...row,
        session: onDesk.find(({ id }) => id === row.sessionId) ?? row.session,
      })),
    [sessions, onDesk],
  );
  const chosen = rows.filter(({ sessionId }) => picked?.has(sessionId) === true);
  /** Hands over what is chosen and not under way yet, a folder asked for; then the next session due. */
  const goOn = (): void | Promise<void> => {
    const underWay = new Set(
      jobsState
        .getState()
        .jobs.filter((job) => job.kind === 'handover' && isUnderWay(job))
        .map((job) => job.sessionId),
    );
    const left = chosen.filter(({ session, sessionId }) => session.state !== 'sent' && !underWay.has(sessionId));
    if (left.length > 0) form.current?.requestSubmit();
    else return goToNextDue(from);
  };
  const latest = useRef(goOn);
  latest.current = goOn;
  const context = useMemo<NightContext>(() => ({ readOnly: false, goOn: () => latest.current() }), []);
  const back = (): void =>
    screenState.getState().go(from === null ? { kind: 'desk' } : { kind: 'letter', sessionId: from });
  return (
    <>
      <header className="screen-head">
        <button type="button" className="quiet-button" onClick={back}>
          <ArrowLeft aria-hidden="true" /> {sayHandover(from === null ? 'desk' : 'letter')}
        </button>
        <h1>{sayHandover('title')}</h1>
        <span className="soft head-words">
          {sessions === null ? '' : dueWords(rows.filter(({ due }) => due).length, next)}
        </span>
        <span className="head-gap" />
        <CommandButton
          command={nextToDo}
          availability={availabilityOf(nextToDo, context)}
          onRun={() => runCommand(nextToDo, context)}
        >
          <CalendarClock aria-hidden="true" />
        </CommandButton>
      </header>
      <main className="handover">
        <section className="handover-sessions" aria-label={sayHandover('sessions')}>
          {rows.length > 0 ? (
            <>
              <SessionsToHandOver rows={rows} picked={picked ?? new Set()} onPick={setPicked} />
              {next !== null && (
                <button type="button" className="quiet-button" onClick={() => void handoverState.getState().loadMore()}>
                  {sayHandover('moreSessions')}
                </button>
              )}
            </>
          ) : (
            sessions !== null && (
              <div className="empty-desk">
                <h2>
                  <PackageOpen aria-hidden="true" /> {sayHandover('nothing')}
                </h2>
                <p>{sayHandover('nothingWords')}</p>
              </div>
            )
          )}
        </section>
        <aside className="handover-side">
          <HandoverForm chosen={chosen.map(({ session }) => session)} form={form} />
          <HandoverJobs />
        </aside>
      </main>
      <ScreenCommands commands={commands} context={context} sessionId={null} panel={panel} onPanel={setPanel} />
    </>
  );
}
