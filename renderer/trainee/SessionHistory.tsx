import type { HistoryPoint } from '../../electron/contract/comparing.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { FaultChange } from '../../engine/progress/faultChanges.ts';
import { day, points as inPoints } from '../base/figures.ts';
import { screenState } from '../state/screenState.ts';

type SessionHistoryProps = { readonly points: readonly HistoryPoint[]; readonly catalogue: Catalogue };

const kindWords: Readonly<Record<FaultChange['kind'], string>> = {
  new: 'new',
  back: 'back',
  worse: 'worse',
  same: 'as before',
  better: 'better',
  gone: 'gone',
};

/** The sessions, the newest first, each with what became of the faults since the one before. */
export function SessionHistory({ points, catalogue }: SessionHistoryProps) {
  const exerciseOf = (id: string) => catalogue.exercises.find((one) => one.id === id);
  const said = ({ exercise, fault, now, before }: FaultChange): string => {
    const load = now ?? before;
    const reps = load === null ? '' : `, ${now === null ? 'before: ' : ''}${load.reps} of ${load.of} reps`;
    const name = exerciseOf(exercise)?.faults.find((one) => one.id === fault)?.name ?? fault;
    return `${name} (${exerciseOf(exercise)?.name ?? exercise}${reps})`;
  };
  return (
    <section aria-label="Sessions">
      <h2>Sessions</h2>
      <ol className="trainee-sessions">
        {[...points].reverse().map((point) => (
          <li key={point.sessionId}>
            <button
              type="button"
              className="row-button"
              onClick={() => screenState.getState().go({ kind: 'review', sessionId: point.sessionId })}
            >
              {day(point.date)}
              {point.title !== '' && <span className="soft">{point.title}</span>}
            </button>
            <span>
              <strong className="session-mark">{point.grade?.mark ?? '–'}</strong>{' '}
              <span className="figure soft">{point.grade === null ? '' : inPoints(point.grade.score)}</span>
            </span>
            {point.changes.length > 0 && (
              <ul className="fault-changes">
                {point.changes.map((change) => (
                  <li key={`${change.exercise}/${change.fault}`} data-kind={change.kind}>
                    <strong>{kindWords[change.kind]}</strong> {said(change)}
                  </li>
                ))}
              </ul>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}
