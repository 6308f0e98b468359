import { CalendarClock } from 'lucide-react';
import { useEffect } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { minutesLeft } from '../../engine/night/pace.ts';
import { nextStep } from '../../engine/night/sessionState.ts';
import { day, plain } from '../base/figures.ts';
import { later } from '../base/later.ts';
import { KeyHint, useShortcuts } from '../commands/CommandButton.tsx';
import { nextToDo } from '../commands/nightCommands.ts';
import { useIsMine } from '../state/mine.ts';
import { nightState } from '../state/nightState.ts';
import { settingsState } from '../state/settingsState.ts';
import { sayNight } from '../words/sayNight.ts';

type NightBarProps = {
  /** What is next to do, as the desk has it; null where nothing is due. */
  readonly first: SessionSummary | null;
  /** Changes whenever a session on the desk does. */
  readonly sessions: readonly SessionSummary[];
  readonly onGo: () => void;
};

/** How long the desk has to stay as it is before what is left is read again. */
const quietMs = 300;

/** What is next to do, how much is left, and about how long it takes. */
export function NightBar({ first, sessions, onGo }: NightBarProps) {
  const settings = settingsState((state) => state.settings);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is left is old once a session or a setting has changed
  useEffect(() => later(quietMs, () => void nightState.getState().refresh()), [sessions, settings]);
  return (
    <section className="night-bar" aria-label={sayNight('next')}>
      {first === null ? <p>{sayNight('allDone')}</p> : <NextSession session={first} onGo={onGo} />}
      <Left />
    </section>
  );
}

function NextSession({ session, onGo }: { readonly session: SessionSummary; readonly onGo: () => void }) {
  const isMine = useIsMine();
  const { title, traineeName, date } = session;
  const name = isMine(session) ? title : [traineeName, title].filter((part) => part !== '').join(', ');
  const step = nextStep(session);
  const shortcuts = useShortcuts(nextToDo);
  return (
    <>
      <button type="button" className="primary" aria-keyshortcuts={shortcuts} onClick={onGo}>
        <CalendarClock aria-hidden="true" /> {nextToDo.button?.()} <KeyHint command={nextToDo} />
      </button>
      <p className="night-next">
        <strong className="cut" title={name}>
          {name === '' ? day(date) : name}
        </strong>
        {step !== 'none' && <span className="soft">{sayNight(step)}</span>}
      </p>
    </>
  );
}

/** How many sessions are due and late, and the time that is left at the pace of today or of the last days. */
function Left() {
  const left = nightState((state) => state.left);
  if (left === null || left.sessions === 0) return null;
  const { sessions, late, clips, more, pace } = left;
  const minutes = pace === null ? 0 : minutesLeft(pace, clips);
  return (
    <p className="night-left" data-testid="night-left">
      <span>{sayNight('due', { count: sessions, more: more ? 'yes' : 'no' })}</span>
      {late > 0 && <strong className="late">{sayNight('late', { count: late })}</strong>}
      {minutes === 0 || pace === null ? (
        <span>{sayNight('clipsLeft', { clips })}</span>
      ) : (
        <span
          title={sayNight(pace.by === 'today' ? 'paceToday' : 'paceLastDays', {
            minutes: plain(Math.max(1, Math.round(pace.minutesPerClip))),
          })}
        >
          {minutes < 90
            ? sayNight('minutes', { minutes, clips })
            : sayNight('hours', { hours: plain(minutes / 60), clips })}
        </span>
      )}
    </p>
  );
}
