import { ArrowLeft } from 'lucide-react';
import { useEffect, useMemo, useState } from 'react';
import type { Result, SessionSummary } from '../../electron/contract/requests.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { read } from '../bridge/read.ts';
import { ScreenKeys, useKeyPanel } from '../keys/ScreenKeys.tsx';
import { day } from '../parts/figures.ts';
import { catalogueState } from '../state/catalogueState.ts';
import { deskState } from '../state/deskState.ts';
import { screenState } from '../state/screenState.ts';
import { AgreementTable } from './AgreementTable.tsx';
import { Differences } from './Differences.tsx';

type AgreementScreenProps = { readonly firstId: string | null; readonly secondId: string | null };

const called = ({ traineeName, title, date }: SessionSummary): string =>
  [traineeName, title, day(date)].filter((part) => part !== '').join(', ');

/** Two judgements of the same clips side by side: how far they agree, and where they differ most. */
export function AgreementScreen(asked: AgreementScreenProps) {
  const sessions = deskState((state) => state.sessions);
  const [firstId, setFirst] = useState(asked.firstId);
  const [secondId, setSecond] = useState(asked.secondId);
  const [compared, setCompared] = useState<Result<'agreement.compare'> | null>(null);
  const [catalogue, setCatalogue] = useState<Catalogue | null>(null);
  const [panel, setPanel] = useKeyPanel();
  const acts = useMemo(() => ({}), []);
  useEffect(() => {
    void deskState.getState().refresh();
  }, []);
  useEffect(() => {
    setCompared(null);
    if (firstId === null || secondId === null) return;
    let stale = false;
    void (async () => {
      const result = await read('agreement.compare', { firstId, secondId });
      const judgedBy = result === null ? null : await catalogueState.getState().fetch(result.rubricVersion);
      if (stale) return;
      setCatalogue(judgedBy);
      setCompared(result);
    })();
    return () => {
      stale = true;
    };
  }, [firstId, secondId]);
  const pickers = [
    { label: 'First judgement', value: firstId, other: secondId, choose: setFirst },
    { label: 'Second judgement', value: secondId, other: firstId, choose: setSecond },
  ];
  return (
    <>
      <header className="screen-head">
        <button type="button" className="quiet-button" onClick={() => screenState.getState().go({ kind: 'desk' })}>
          <ArrowLeft aria-hidden="true" /> Desk
        </button>
        <h1>Agreement</h1>
      </header>
      <main className="agreement">
        <div className="agreement-pickers">
          {pickers.map(({ label, value, other, choose }) => (
            <label key={label}>
              {label}{' '}
              <select value={value ?? ''} onChange={(event) => choose(event.target.value || null)}>
                <option value="">Choose a session</option>
                {sessions.map((session) => (
                  <option key={session.id} value={session.id} disabled={session.id === other}>
                    {called(session)}
                  </option>
                ))}
              </select>
            </label>
          ))}
        </div>
        {compared === null || catalogue === null ? (
          <p className="empty">
            Choose two judgements of the same clips: two coaches’, or one coach’s and their second look.
          </p>
        ) : (
          <>
            <AgreementTable agreement={compared.agreement} criteria={catalogue.rubric.criteria} />
            <Differences
              agreement={compared.agreement}
              clips={compared.clips}
              catalogue={catalogue}
              firstId={firstId ?? ''}
            />
          </>
        )}
      </main>
      <ScreenKeys acts={acts} sessionId={null} asked={panel} onAsk={setPanel} />
    </>
  );
}
