import { ArrowLeft } from 'lucide-react';
import { useEffect, useState } from 'react';
import type { Result } from '../../electron/contract/requests.ts';
import type { Catalogue } from '../../engine/exercises/catalogue.ts';
import { EverywhereCommands, useCommandPanel } from '../commands/ScreenCommands.tsx';
import { catalogueState } from '../state/catalogueState.ts';
import { deskState } from '../state/deskState.ts';
import { screenState } from '../state/screenState.ts';
import { sayAgreement } from '../words/sayAgreement.ts';
import { AgreementTable } from './AgreementTable.tsx';
import { Differences } from './Differences.tsx';
import { comparisonOf, JudgementPickers, type OtherJudgement } from './JudgementPickers.tsx';

type AgreementScreenProps = { readonly firstId: string | null; readonly secondId: string | null };

/** Two judgements of the same clips side by side: how far they agree, and where they differ most. */
export function AgreementScreen(asked: AgreementScreenProps) {
  const sessions = deskState((state) => state.sessions);
  const [firstId, setFirst] = useState(asked.firstId);
  const [other, setOther] = useState<OtherJudgement | null>(
    asked.secondId === null ? null : { kind: 'session', sessionId: asked.secondId },
  );
  const [compared, setCompared] = useState<Result<'agreement.compare'> | null>(null);
  const [catalogue, setCatalogue] = useState<Catalogue | null>(null);
  const [panel, setPanel] = useCommandPanel();
  useEffect(() => {
    void (async () => {
      await deskState.getState().refresh();
      for (const id of [asked.firstId, asked.secondId]) if (id !== null) await deskState.getState().include(id);
    })();
  }, [asked.firstId, asked.secondId]);
  useEffect(() => {
    setCompared(null);
    if (firstId === null || other === null) return;
    let stale = false;
    void (async () => {
      const result = await comparisonOf(firstId, other);
      const judgedBy = result === null ? null : await catalogueState.getState().fetch(result.rubricVersion);
      if (stale) return;
      setCatalogue(judgedBy);
      setCompared(result);
    })();
    return () => {
      stale = true;
    };
  }, [firstId, other]);
  return (
    <>
      <header className="screen-head">
        <button type="button" className="quiet-button" onClick={() => screenState.getState().go({ kind: 'desk' })}>
          <ArrowLeft aria-hidden="true" /> {sayAgreement('desk')}
        </button>
        <h1>{sayAgreement('agreement')}</h1>
      </header>
      <main className="agreement">
        <JudgementPickers sessions={sessions} firstId={firstId} other={other} onFirst={setFirst} onOther={setOther} />
        {compared === null || catalogue === null ? (
          <p className="empty">{sayAgreement('empty')}</p>
        ) : (
          <>
            <AgreementTable agreement={compared.agreement} catalogue={catalogue} />
            {compared.agreement.overall.moments > 0 && (
              <Differences
                agreement={compared.agreement}
                clips={compared.clips}
                catalogue={catalogue}
                firstId={firstId ?? ''}
              />
            )}
          </>
        )}
      </main>
      <EverywhereCommands panel={panel} onPanel={setPanel} />
    </>
  );
}
