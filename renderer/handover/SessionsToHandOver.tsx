import { type HandoverRow, SessionRow } from './SessionRow.tsx';

type SessionsToHandOverProps = {
  readonly rows: readonly HandoverRow[];
  readonly picked: ReadonlySet<string>;
  readonly onPick: (picked: ReadonlySet<string>) => void;
};

/** The sessions that can be handed over, those that are due first; each is chosen by its box. */
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
    <table className="session-table">
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
              <span>All due</span>
            </label>
          </th>
          <th scope="col">Trainee</th>
          <th scope="col">Date</th>
          <th scope="col">Grade</th>
          <th scope="col" className="end">
            Looked at
          </th>
          <th scope="col">Named in it</th>
          <th scope="col">Handed over</th>
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
