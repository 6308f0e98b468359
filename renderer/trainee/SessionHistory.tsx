import type { HistoryPoint } from '../../electron/contract/comparing.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import type { FaultChange } from '../../engine/progress/faultChanges.ts';
import type { TraineeMessageId } from '../../engine/wording/english/desk/trainee.ts';
import { day, points as inPoints } from '../base/figures.ts';
import { screenState } from '../state/screenState.ts';
import { sayTrainee } from '../words/sayTrainee.ts';

type SessionHistoryProps = { readonly points: readonly HistoryPoint[]; readonly catalogue: Catalogue };

const idOf = {
  new: 'faultNew',
  back: 'faultBack',
  worse: 'faultWorse',
  same: 'faultSame',
  better: 'faultBetter',
  gone: 'faultGone',
} as const satisfies Readonly<Record<FaultChange['kind'], TraineeMessageId>>;

/** The sessions, the newest first, each with what became of the faults since the one before. */
export function SessionHistory({ points, catalogue }: SessionHistoryProps) {
  const exerciseOf = (id: string) => catalogue.exercises.find((one) => one.id === id);
  const said = ({ exercise, fault, now, before }: FaultChange): string => {
    const load = now ?? before;
    const names = {
      fault: exerciseOf(exercise)?.faults.find((one) => one.id === fault)?.name ?? fault,
      exercise: exerciseOf(exercise)?.name ?? exercise,
    };
    if (load === null) return sayTrainee('faultOf', names);
    return sayTrainee(now === null ? 'faultRepsBefore' : 'faultReps', { ...names, reps: load.reps, of: load.of });
  };
  return (
    <section aria-label={sayTrainee('sessions')}>
      <h2>{sayTrainee('sessions')}</h2>
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
                    <strong>{sayTrainee(idOf[change.kind])}</strong> {said(change)}
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
