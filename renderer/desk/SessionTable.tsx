import type { SessionSummary } from '../../electron/contract/desk.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { dueInOrder, listOf } from '../state/deskState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { sayNight } from '../words/sayNight.ts';
import { SessionRow, type SessionRowProps } from './SessionRow.tsx';

type SessionTableProps = Pick<SessionRowProps, 'onDropClips' | 'onAddClips'> & {
  readonly sessions: readonly SessionSummary[];
};

const columns = 8;

/** The sessions as rows: what is to do first, in the order it is done, then what is done, the newest first. */
export function SessionTable({ sessions, ...acts }: SessionTableProps) {
  const catalogue = catalogueState((state) => state.catalogue);
  const exerciseName = (id: string): string => catalogue?.exercises.find((known) => known.id === id)?.name ?? id;
  const groups = [
    { name: sayNight('toDo'), rows: dueInOrder(sessions) },
    { name: sayNight('doneSessions'), rows: sessions.filter((session) => listOf(session) === 'done') },
  ].filter(({ rows }) => rows.length > 0);
  return (
    <table className="session-table desk-table" aria-label={sayDesk('sessions')}>
      <thead>
        <tr>
          <th scope="col" className="name-column">
            {sayDesk('trainee')}
          </th>
          <th scope="col" className="state-column">
            {sayNight('state')}
          </th>
          <th scope="col" className="date-column">
            {sayDesk('date')}
          </th>
          <th scope="col" className="posters-column">
            <span className="visually-hidden">{sayDesk('pictures')}</span>
          </th>
          <th scope="col">{sayDesk('exercises')}</th>
          <th scope="col" className="end count-column">
            {sayDesk('clips')}
          </th>
          <th scope="col" className="grade-column">
            {sayDesk('grade')}
          </th>
          <th scope="col" className="acts-column">
            <span className="visually-hidden">{sayDesk('acts')}</span>
          </th>
        </tr>
      </thead>
      {groups.map(({ name, rows }) => (
        <tbody key={name}>
          <tr className="group-row">
            <th scope="rowgroup" colSpan={columns}>
              {name}
            </th>
          </tr>
          {rows.map((session) => (
            <SessionRow key={session.id} session={session} exerciseName={exerciseName} {...acts} />
          ))}
        </tbody>
      ))}
    </table>
  );
}
