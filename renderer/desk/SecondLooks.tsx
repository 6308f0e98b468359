import type { SessionSummary } from '../../electron/contract/desk.ts';
import { day, share } from '../base/figures.ts';
import { screenState } from '../state/screenState.ts';

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
