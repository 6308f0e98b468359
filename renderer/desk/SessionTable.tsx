import { ChartLine, FilePlus2 } from 'lucide-react';
import { useState } from 'react';
import { posterAddress } from '../../electron/contract/addresses.ts';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { counted, day, share } from '../base/figures.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { dueFirst } from '../state/deskState.ts';
import { screenState } from '../state/screenState.ts';
import { droppedPaths, holdsFiles } from './BringIn.tsx';

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
          <th scope="col">Trainee</th>
          <th scope="col">Date</th>
          <th scope="col">
            <span className="visually-hidden">Pictures</span>
          </th>
          <th scope="col">Exercises</th>
          <th scope="col" className="end">
            Clips
          </th>
          <th scope="col" className="end">
            Flags
          </th>
          <th scope="col">Grade</th>
          <th scope="col" className="end">
            Looked at
          </th>
          <th scope="col">
            <span className="visually-hidden">Add clips</span>
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
                {session.traineeName}
                {session.title !== '' && <span className="soft">{session.title}</span>}
                {session.readOnly && <span className="soft">received, to be read</span>}
              </button>
            </th>
            <td className="figure">{day(session.date)}</td>
            <td className="posters">
              {session.posterClipIds.map((clipId) => (
                <img key={clipId} src={posterAddress(clipId)} alt="" draggable={false} />
              ))}
            </td>
            <td>{session.exercises.map(nameOf).join(', ') || <span className="soft">none yet</span>}</td>
            <td className="figure end">{session.clips}</td>
            <td className="figure end">{session.flags}</td>
            <td>
              <strong className="session-mark">{session.mark === '' ? '–' : session.mark}</strong>
              {session.provisional && <span className="soft"> provisional</span>}
              {session.byHand && <span className="soft"> by hand</span>}
            </td>
            <td className="figure end">{share(session.coverage)}</td>
            <td className="end row-acts">
              <button
                type="button"
                className="quiet-button"
                aria-label={`History of ${session.traineeName}`}
                onClick={() => screenState.getState().go({ kind: 'trainee', traineeId: session.traineeId })}
              >
                <ChartLine aria-hidden="true" /> History
              </button>
              {!session.readOnly && (
                <button
                  type="button"
                  className="quiet-button"
                  aria-label={`Add clips to ${session.traineeName}, ${day(session.date)}`}
                  title={counted(session.clips, 'clip')}
                  onClick={() => onAddClips(session.id)}
                >
                  <FilePlus2 aria-hidden="true" /> Add clips
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
    <section className="second-looks" aria-label="Second looks">
      <h2>Second looks</h2>
      <p className="soft">
        The same clips judged again, with nothing of the first judgement to be seen. Finish one before you compare.
      </p>
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
                  {look.traineeName}
                  <span className="soft">{look.title}</span>
                </button>
              </th>
              <td className="figure">{day(look.date)}</td>
              <td className="figure end">{share(look.coverage)} looked at</td>
              <td className="end">
                <button
                  type="button"
                  onClick={() =>
                    screenState.getState().go({ kind: 'agreement', firstId: look.secondLookOf, secondId: look.id })
                  }
                >
                  Compare
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
