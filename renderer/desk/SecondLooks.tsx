import type { SessionSummary } from '../../electron/contract/desk.ts';
import { day, share } from '../base/figures.ts';
import { arrangingState } from '../shared/arranging/arrangingState.ts';
import { SessionName } from '../shared/SessionName.tsx';
import { screenState } from '../state/screenState.ts';
import { sayDesk } from '../words/sayDesk.ts';
import { SessionMenu } from './SessionMenu.tsx';

/** Sessions that are judged a second time, blind; each leads to its comparison with the first judgement. */
export function SecondLooks({ sessions }: { readonly sessions: readonly SessionSummary[] }) {
  const looks = sessions.filter(({ secondLookOf }) => secondLookOf !== null);
  if (looks.length === 0) return null;
  return (
    <section className="second-looks" aria-label={sayDesk('secondLooks')}>
      <h2>{sayDesk('secondLooks')}</h2>
      <p className="soft">{sayDesk('secondLooksWords')}</p>
      <table className="session-table" aria-label={sayDesk('secondLooks')}>
        <tbody>
          {looks.map((look) => (
            <tr key={look.id} data-second-look={look.id} onFocus={() => arrangingState.getState().atRow(look.id)}>
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
                <SessionMenu session={look} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
