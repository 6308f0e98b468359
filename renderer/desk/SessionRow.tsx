import { ChartLine, FilePlus2 } from 'lucide-react';
import { useState } from 'react';
import { posterAddress } from '../../electron/contract/addresses.ts';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { day, share } from '../base/figures.ts';
import { droppedPaths, holdsFiles } from '../importing/droppedPaths.ts';
import { arrangingState } from '../shared/arranging/arrangingState.ts';
import { SessionName } from '../shared/SessionName.tsx';
import { screenState } from '../state/screenState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { SessionMenu } from './SessionMenu.tsx';
import { StateCell } from './StateCell.tsx';

export type SessionRowProps = {
  readonly session: SessionSummary;
  readonly exerciseName: (id: string) => string;
  readonly onDropClips: (sessionId: string, paths: readonly string[]) => void;
  readonly onAddClips: (sessionId: string) => void;
};

/** A session: a click anywhere on its row opens it, or asks for its clips where it has none, its own buttons apart; clips can be dropped on it. */
export function SessionRow({ session, exerciseName, onDropClips, onAddClips }: SessionRowProps) {
  const [over, setOver] = useState<'over' | 'away'>('away');
  // Without clips there is nothing to judge: they are asked for first.
  const waits = session.clips === 0 && !session.readOnly;
  const exercises = session.exercises.map(exerciseName).join(', ');
  return (
    <tr
      data-session={session.id}
      data-over={over === 'over'}
      onFocus={() => arrangingState.getState().atRow(session.id)}
      onDragOver={(event) => {
        if (session.readOnly || !holdsFiles(event.dataTransfer)) return;
        event.preventDefault();
        setOver('over');
      }}
      onDragLeave={() => setOver('away')}
      onDrop={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setOver('away');
        onDropClips(session.id, droppedPaths(event.dataTransfer));
      }}
    >
      <th scope="row">
        <button
          type="button"
          className="row-button"
          title={[session.traineeName, session.title].filter((part) => part !== '').join(', ')}
          onClick={() =>
            waits ? onAddClips(session.id) : screenState.getState().go({ kind: 'review', sessionId: session.id })
          }
        >
          <SessionName session={session} />
          {session.readOnly && <span className="soft">{sayDesk('received')}</span>}
          {session.damaged && <strong className="soft">{sayDesk('damaged')}</strong>}
        </button>
      </th>
      <td className="state-cell">
        <StateCell session={session} />
      </td>
      <td className="figure">{day(session.date)}</td>
      <td className="posters">
        {session.posters.map(({ clipId, look }) => (
          <img key={clipId} src={posterAddress(clipId, look)} alt="" draggable={false} />
        ))}
      </td>
      <td className="exercises" title={exercises}>
        {exercises === '' ? <span className="soft">{sayDesk('noExercises')}</span> : exercises}
      </td>
      <td className="figure end" data-label={sayDesk('clips')}>
        {session.clips}
      </td>
      <td className="grade-cell">
        <strong className="session-mark">{session.mark === '' ? '–' : session.mark}</strong>
        {session.provisional && <span className="soft"> {sayDesk('provisional')}</span>}
        {session.byHand && <span className="soft"> {sayDesk('byHand')}</span>}
        {session.clips > 0 && (
          <span className="soft grade-facts">
            {sayDesk('gradeFacts', { share: share(session.coverage), flags: session.flags })}
          </span>
        )}
      </td>
      <td className="end row-acts">
        <RowActs session={session} onAddClips={onAddClips} />
      </td>
    </tr>
  );
}

/** What can be done with a session from the desk, besides opening it. */
function RowActs({ session, onAddClips }: Pick<SessionRowProps, 'session' | 'onAddClips'>) {
  const history = sayDesk('historyOf', { name: session.traineeName });
  const importInto = sayDesk('importInto', { session: `${session.traineeName}, ${day(session.date)}` });
  return (
    <>
      <button
        type="button"
        className="icon-button"
        aria-label={history}
        title={history}
        onClick={() => screenState.getState().go({ kind: 'trainee', traineeId: session.traineeId })}
      >
        <ChartLine aria-hidden="true" />
      </button>
      {!session.readOnly && (
        <button
          type="button"
          className="icon-button"
          aria-label={importInto}
          title={importInto}
          onClick={() => onAddClips(session.id)}
        >
          <FilePlus2 aria-hidden="true" />
        </button>
      )}
      <SessionMenu session={session} />
    </>
  );
}
