import type { SessionSummary } from '../../electron/contract/desk.ts';
import { localDay } from '../../electron/contract/localDay.ts';
import { latenessOf } from '../../engine/night/lateness.ts';
import { dayOf } from '../base/figures.ts';
import { listOf } from '../state/deskState.ts';
import { settingsState } from '../state/settingsState.ts';
import { sayNight } from '../words/sayNight.ts';

/** What is said of the day that a session was promised for; '' where nothing was promised. */
function dueWords({ cameAt }: SessionSummary, daysPromised: number): string {
  const lateness = latenessOf(localDay(new Date(cameAt)), localDay(new Date()), daysPromised);
  switch (lateness.kind) {
    case 'inTime':
      return sayNight('dueIn', { days: lateness.daysLeft });
    case 'today':
      return sayNight('dueToday');
    case 'late':
      return sayNight('daysLate', { days: lateness.days });
  }
}

/** Where a session stands, how much of it is measured, and when it was promised for. */
export function StateCell({ session }: { readonly session: SessionSummary }) {
  const daysPromised = settingsState(({ settings }) => settings?.daysPromised ?? null);
  const isDue = listOf(session) === 'due';
  const { state, clips, measured, cameAt } = session;
  if (isDue && clips === 0) return <span className="soft">{sayNight('waitsForClips')}</span>;
  const promised = isDue && cameAt !== '' && state !== 'changedSince' && daysPromised !== null;
  const words = promised ? dueWords(session, daysPromised) : '';
  const isLate = promised && latenessOf(localDay(new Date(cameAt)), localDay(new Date()), daysPromised).kind === 'late';
  return (
    <>
      <span className="session-state" data-state={session.finished ? 'finished' : state}>
        {sayNight(session.finished ? 'finished' : state)}
      </span>
      {words !== '' && (
        <span className={isLate ? 'due-words late' : 'due-words soft'} title={sayNight('came', { day: dayOf(cameAt) })}>
          {words}
        </span>
      )}
      {isDue && (state === 'new' || state === 'inWork') && measured < clips && (
        <span className="due-words soft">{sayNight('measuredOf', { measured, clips })}</span>
      )}
    </>
  );
}
