import { ChartLine, FilePlus2 } from 'lucide-react';
import { useState } from 'react';
import { posterAddress } from '../../electron/contract/addresses.ts';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { day, share } from '../base/figures.ts';
import { SessionName } from '../shared/SessionName.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { dueFirst } from '../state/deskState.ts';
import { screenState } from '../state/screenState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { droppedPaths, holdsFiles } from './ImportClips.tsx';

type SessionTableProps = {
  readonly sessions: readonly SessionSummary[];
  readonly onDropClips: (sessionId: string, paths: readonly string[]) => void;
  readonly onAddClips: (sessionId: string) => void;
};

/** The sessions as rows; clips can be dropped on each. */
export function SessionTable({ sessions, onDropClips, onAddClips }: SessionTableProps) {
  const catalogue = catalogueState((state) => state.catalogue);
  const [over, setOver] = useState<string | null>(null);
  const nameOf = (id: string): string => catalogue?.exercises.find((known) => known.id === id)?.name ?? id;
  return (
    <table className="session-table">
      <thead>
        <tr>
          <th scope="col">{sayDesk('trainee')}</th>
          <th scope="col">{sayDesk('date')}</th>
          <th scope="col">
            <span className="visually-hidden">{sayDesk('pictures')}</span>
          </th>
          <th scope="col">{sayDesk('exercises')}</th>
          <th scope="col" className="end">
            {sayDesk('clips')}
          </th>
          <th scope="col" className="end">
            {sayDesk('flags')}
          </th>
          <th scope="col">{sayDesk('grade')}</th>
          <th scope="col" className="end">
            {sayDesk('lookedAt')}
          </th>
          <th scope="col">
            <span className="visually-hidden">{sayDesk('importClips')}</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {dueFirst(sessions).map((session) => (
          <tr
            key={session.id}
            data-session={session.id}
            data-over={over === session.id}
            onDragOver={(event) => {
              if (session.readOnly || !holdsFiles(event.dataTransfer)) return;
              event.preventDefault();
              setOver(session.id);
            }}
            onDragLeave={() => setOver(null)}
            onDrop={(event) => {
              event.preventDefault();
              event.stopPropagation();
              setOver(null);
              onDropClips(session.id, droppedPaths(event.dataTransfer));
            }}
          >
            <th scope="row">
              <button
                type="button"
                className="row-button"
                onClick={() => screenState.getState().go({ kind: 'review', sessionId: session.id })}
              >
                <SessionName session={session} />
                {session.readOnly && <span className="soft">{sayDesk('received')}</span>}
              </button>
            </th>
            <td className="figure">{day(session.date)}</td>
            <td className="posters">
              {session.posterClipIds.map((clipId) => (
                <img key={clipId} src={posterAddress(clipId)} alt="" draggable={false} />
              ))}
            </td>
            <td>
              {session.exercises.map(nameOf).join(', ') || <span className="soft">{sayDesk('noExercises')}</span>}
            </td>
            <td className="figure end">{session.clips}</td>
            <td className="figure end">{session.flags}</td>
            <td>
              <strong className="session-mark">{session.mark === '' ? '–' : session.mark}</strong>
              {session.provisional && <span className="soft"> {sayDesk('provisional')}</span>}
              {session.byHand && <span className="soft"> {sayDesk('byHand')}</span>}
            </td>
            <td className="figure end">{share(session.coverage)}</td>
            <td className="end row-acts">
              <button
                type="button"
                className="quiet-button"
                aria-label={sayDesk('historyOf', { name: session.traineeName })}
                onClick={() => screenState.getState().go({ kind: 'trainee', traineeId: session.traineeId })}
              >
                <ChartLine aria-hidden="true" /> {sayDesk('history')}
              </button>
              {!session.readOnly && (
                <button
                  type="button"
                  className="quiet-button"
                  aria-label={sayDesk('importInto', { session: `${session.traineeName}, ${day(session.date)}` })}
                  title={sayDesk('clipCount', { count: session.clips })}
                  onClick={() => onAddClips(session.id)}
                >
                  <FilePlus2 aria-hidden="true" /> {sayDesk('importShort')}
                </button>
              )}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Sessions that are judged a second time, blind; each leads to its comparison with the first judgement. */
export function SecondLooks({ sessions }: { readonly sessions: readonly SessionSummary[] }) {
  const looks = sessions.filter(({ secondLookOf }) => secondLookOf !== null);
  if (looks.length === 0) return null;
  return (
    <section className="second-looks" aria-label={sayDesk('secondLooks')}>
      <h2>{sayDesk('secondLooks')}</h2>
      <p className="soft">{sayDesk('secondLooksWords')}</p>
      <table className="session-table">
        <tbody>
          {looks.map((look) => (
            <tr key={look.id} data-second-look={look.id}>
              <th scope="row">
                <button
                  type="button"
                  className="row-button"
                  onClick={() => screenState.getState().go({ kind: 'review', sessionId: look.id })}
                >
                  <SessionName session={look} />
                </button>
              </th>
              <td className="figure">{day(look.date)}</td>
              <td className="figure end">{sayDesk('shareLookedAt', { share: share(look.coverage) })}</td>
              <td className="end">
                <button
                  type="button"
                  onClick={() =>
                    screenState.getState().go({ kind: 'agreement', firstId: look.secondLookOf, secondId: look.id })
                  }
                >
                  {sayDesk('compare')}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
