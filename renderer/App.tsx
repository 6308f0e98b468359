import { useEffect, useState } from 'react';
import { AgreementScreen } from './agreement/AgreementScreen.tsx';
import { BinScreen } from './bin/BinScreen.tsx';
import { CompareScreen } from './compare/CompareScreen.tsx';
import { DeskScreen } from './desk/DeskScreen.tsx';
import { FirstStartScreen } from './firstStart/FirstStartScreen.tsx';
import { HandoverScreen } from './handover/HandoverScreen.tsx';
import { ReceivedFiles } from './importing/ReceivedFiles.tsx';
import { InboxScreen } from './inbox/InboxScreen.tsx';
import { LetterScreen } from './letter/LetterScreen.tsx';
import { ReviewHints } from './review/ReviewHints.tsx';
import { ReviewScreen } from './review/ReviewScreen.tsx';
import { AboutDialog } from './shared/AboutDialog.tsx';
import { ArrangingDialogs } from './shared/arranging/ArrangingDialogs.tsx';
import { JobsDialog } from './shared/JobsPanel.tsx';
import { StatusLine } from './shared/StatusLine.tsx';
import { isOpenJob, jobsState } from './state/jobsState.ts';
import { libraryState } from './state/libraryState.ts';
import { type Screen, screenState } from './state/screenState.ts';
import { TraineeScreen } from './trainee/TraineeScreen.tsx';
import { TraineesScreen } from './trainees/TraineesScreen.tsx';
import { useArrival } from './useArrival.ts';
import { sayApp } from './words/sayApp.ts';
import { sayProblem } from './words/sayProblem.ts';

/** Which screen is on, over the status line. */
export function App() {
  const library = libraryState((state) => state.library);
  const screen = screenState((state) => state.screen);
  const [jobs, setJobs] = useState<'shown' | 'hidden'>('hidden');
  const [demoJobId, setDemoJobId] = useState<string | null>(null);
  const demoRuns = jobsState((state) => state.jobs.some((job) => job.id === demoJobId && isOpenJob(job)));
  const demoKnown = jobsState((state) => state.jobs.some((job) => job.id === demoJobId));
  useEffect(() => {
    if (demoJobId !== null && demoKnown && !demoRuns) setDemoJobId(null);
  }, [demoJobId, demoKnown, demoRuns]);

  const first = library?.kind === 'none' || demoJobId !== null;
  useArrival(library?.kind === 'open' && !first ? screen : null);

  if (library === null) return <main className="screen-wait">{sayApp('opening')}</main>;
  if (library.kind === 'failed') {
    return (
      <>
        <main className="first-start">
          <h1>Rackside</h1>
          <p role="alert">{sayProblem(library)}</p>
          <button type="button" className="primary" onClick={() => void libraryState.getState().refresh()}>
            {sayApp('tryAgain')}
          </button>
        </main>
        <AboutDialog />
      </>
    );
  }
  return (
    <div className="frame">
      {first ? <FirstStartScreen demoJobId={demoJobId} onDemoJob={setDemoJobId} /> : <CurrentScreen screen={screen} />}
      {!first && <ArrangingDialogs />}
      <StatusLine onJobs={() => setJobs('shown')}>{!first && screen.kind === 'review' && <ReviewHints />}</StatusLine>
      {!first && <ReceivedFiles />}
      <AboutDialog />
      {jobs === 'shown' && <JobsDialog onClose={() => setJobs('hidden')} />}
    </div>
  );
}

function CurrentScreen({ screen }: { readonly screen: Screen }) {
  switch (screen.kind) {
    case 'desk':
      return <DeskScreen />;
    case 'review':
      return <ReviewScreen sessionId={screen.sessionId} />;
    case 'letter':
      return <LetterScreen sessionId={screen.sessionId} />;
    case 'handover':
      return <HandoverScreen sessionIds={screen.sessionIds} from={screen.from} />;
    case 'inbox':
      return <InboxScreen />;
    case 'trainees':
      return <TraineesScreen />;
    case 'bin':
      return <BinScreen />;
    case 'trainee':
      return <TraineeScreen traineeId={screen.traineeId} />;
    case 'compare':
      return <CompareScreen {...screen} />;
    case 'agreement':
      return <AgreementScreen firstId={screen.firstId} secondId={screen.secondId} />;
  }
}
