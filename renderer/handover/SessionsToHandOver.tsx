import { ChevronDown, ChevronRight } from 'lucide-react';
import { useState } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { day, dayOf, share } from '../base/figures.ts';
import { NamesField } from '../shared/NamesField.tsx';
import { SessionName } from '../shared/SessionName.tsx';
import { handoverState, type SessionToHandOver } from '../state/handoverState.ts';
import { screenState } from '../state/screenState.ts';
import { sayHandover } from '../words/sayHandover.ts';
import { HandedOverList } from './Deliveries.tsx';

type SessionsToHandOverProps = {
  readonly rows: readonly HandoverRow[];
  readonly picked: ReadonlySet<string>;
  readonly onPick: (picked: ReadonlySet<string>) => void;
};

/** The sessions that can be handed over, those that are due first; a click anywhere on a row chooses it, its own buttons apart. */
export function SessionsToHandOver({ rows, picked, onPick }: SessionsToHandOverProps) {
  const due = rows.filter((row) => row.due);
  const allDue = due.length > 0 && due.every(({ sessionId }) => picked.has(sessionId));
  const ordered = [...due, ...rows.filter((row) => !row.due)];
  const toggle = (sessionId: string): void => {
    const next = new Set(picked);
    if (!next.delete(sessionId)) next.add(sessionId);
    onPick(next);
  };
  return (
    <table className="session-table pick-table" aria-label={sayHandover('sessions')}>
      <thead>
        <tr>
          <th scope="col">
            <label className="tick">
              <input
                type="checkbox"
                checked={allDue}
                disabled={due.length === 0}
                onChange={() => onPick(new Set(allDue ? [] : due.map(({ sessionId }) => sessionId)))}
              />
              <span>{sayHandover('allDue')}</span>
            </label>
          </th>
          <th scope="col">{sayHandover('trainee')}</th>
          <th scope="col">{sayHandover('date')}</th>
          <th scope="col">{sayHandover('grade')}</th>
          <th scope="col" className="end">
            {sayHandover('lookedAt')}
          </th>
          <th scope="col">{sayHandover('nameShown')}</th>
          <th scope="col">{sayHandover('handedOver')}</th>
        </tr>
      </thead>
      <tbody>
        {ordered.map((row) => (
          <SessionRow
            key={row.sessionId}
            row={row}
            picked={picked.has(row.sessionId)}
            onToggle={() => toggle(row.sessionId)}
          />
        ))}
      </tbody>
    </table>
  );
}

/** A session that can be handed over, as the desk knows it. */
type HandoverRow = SessionToHandOver & { readonly session: SessionSummary };

type SessionRowProps = { readonly row: HandoverRow; readonly picked: boolean; readonly onToggle: () => void };

/** One session: whether it is chosen, and, opened, what was handed over of it. */
function SessionRow({ row, picked, onToggle }: SessionRowProps) {
  const { session, last, due } = row;
  const [opened, setOpened] = useState<'open' | 'closed'>('closed');
  const sessionName = `${session.traineeName}, ${day(session.date)}`;
  const open = (): void => {
    void handoverState.getState().readHanded(session.id);
    setOpened(opened === 'open' ? 'closed' : 'open');
  };
  const Chevron = opened === 'open' ? ChevronDown : ChevronRight;
  return (
    <>
      <tr data-session={session.id} data-picked={picked}>
        <td>
          <label className="row-pick">
            <input
              type="checkbox"
              aria-label={sayHandover('pick', { session: sessionName })}
              checked={picked}
              onChange={onToggle}
            />
          </label>
        </td>
        <th scope="row" className="name-cell">
          <button
            type="button"
            className="row-button"
            onClick={() => screenState.getState().go({ kind: 'letter', sessionId: session.id })}
          >
            <SessionName session={session} />
          </button>
        </th>
        <td className="figure">{day(session.date)}</td>
        <td>
          <strong className="session-mark">{session.mark}</strong>
          {session.provisional && <span className="soft"> {sayHandover('provisional')}</span>}
        </td>
        <td className="figure end" data-label={sayHandover('lookedAt')}>
          {share(session.coverage)}
        </td>
        <td data-label={sayHandover('nameShown')}>
          <NamesField traineeId={session.traineeId} traineeName={session.traineeName} />
        </td>
        <td data-label={sayHandover('handedOver')}>
          {last === null ? (
            <span className="soft">{sayHandover('notYet')}</span>
          ) : (
            <button
              type="button"
              className="quiet-button"
              aria-expanded={opened === 'open'}
              aria-label={sayHandover('openVersions', {
                version: last.version,
                date: dayOf(last.handedAt),
                session: sessionName,
              })}
              onClick={open}
            >
              <Chevron aria-hidden="true" />{' '}
              {sayHandover('versionAndDay', { version: last.version, date: dayOf(last.handedAt) })}
            </button>
          )}
          {due && last !== null && <span className="soft changed-since">{sayHandover('changedSince')}</span>}
        </td>
      </tr>
      {opened === 'open' && (
        <tr className="handed-over-row">
          <td colSpan={7}>
            <HandedOverList session={session} />
          </td>
        </tr>
      )}
    </>
  );
}
