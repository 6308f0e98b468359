import type { AnyEvent } from '../electron/contract/events.ts';
import type { Job } from '../electron/contract/jobs.ts';
import { rackside } from './bridge/rackside.ts';
import { statusState } from './bridge/statusState.ts';
import { saveDrafts, saveLetterDrafts } from './drafts/drafts.ts';
import { catalogueState } from './state/catalogueState.ts';
import { measuresState } from './state/clipState.ts';
import { deskState } from './state/deskState.ts';
import { handoverState } from './state/handoverState.ts';
import { inboxState } from './state/inboxState.ts';
import { isUnderWay, jobsState } from './state/jobsState.ts';
import { libraryState } from './state/libraryState.ts';
import { reviewState } from './state/reviewState.ts';
import { screenState } from './state/screenState.ts';
import { settingsState } from './state/settingsState.ts';
import { speakSoon } from './state/spokenState.ts';
import { deskLanguage } from './words/deskLanguage.ts';
import { sayJob } from './words/sayJob.ts';
import { sayJobs } from './words/sayJobs.ts';

/** Whether a job has just measured the clip whose measures are on screen. */
const endedMeasuring = ({ kind, state, clipId }: Job): boolean =>
  kind === 'measure' && state === 'done' && clipId === measuresState.getState().clipId;

const endedHandingOver = ({ kind, state }: Job): boolean => kind === 'handover' && state === 'done';

function refreshHandedOver({ sessionId }: Job): void {
  void handoverState.getState().refresh();
  if (sessionId !== null) void handoverState.getState().readHanded(sessionId);
}

/** Tells people who listen that the last of what ran has ended, and what failed; each of forty clips would be noise. */
function sayEnded(job: Job): void {
  if (isUnderWay(job) || (job.state === 'done' && jobsState.getState().jobs.some(isUnderWay))) return;
  speakSoon('job', sayJobs('endedSaid', { state: job.state, job: sayJob(job.title) }));
}

/** What lies in the inbox is read where it is on screen; elsewhere it is enough to know how much. */
const refreshInbox = (): Promise<void> =>
  screenState.getState().screen.kind === 'inbox'
    ? inboxState.getState().refresh()
    : inboxState.getState().refreshCount();

function onEvent(event: AnyEvent): void {
  switch (event.name) {
    case 'jobChanged':
      jobsState.getState().upsert(event.data.job);
      sayEnded(event.data.job);
      if (endedMeasuring(event.data.job)) void measuresState.getState().refresh();
      if (endedHandingOver(event.data.job)) refreshHandedOver(event.data.job);
      return;
    case 'lineChanged':
      // What was taken out of the line is no job any more.
      void jobsState.getState().refresh();
      return;
    case 'sessionChanged':
      deskState.getState().upsert(event.data.sessionId, event.data.summary);
      if (event.data.sessionId === reviewState.getState().sessionId) void reviewState.getState().refresh();
      return;
    case 'inboxChanged':
      void refreshInbox();
      return;
    case 'traineesChanged':
      void deskState.getState().refreshTrainees();
      return;
    case 'settingsChanged':
      void settingsState.getState().refresh();
      return;
    case 'libraryChanged':
      void libraryState.getState().refresh();
      void deskState.getState().refresh();
      void settingsState.getState().refresh();
      return;
    case 'fileNamed':
    case 'aboutAsked':
      // Heard where they are shown.
      return;
    case 'languageChosen':
      deskLanguage.getState().choose(event.data.language);
      void catalogueState.getState().speak();
      if (reviewState.getState().sessionId !== null) void reviewState.getState().refresh();
      return;
    case 'backendRestarted':
      statusState.getState().tell(sayJobs('restarted'));
      // Text whose save was under way then has got no further.
      void saveDrafts();
      void saveLetterDrafts();
      void libraryState.getState().refresh();
      void jobsState.getState().refresh();
      void deskState.getState().refresh();
      void refreshInbox();
      if (reviewState.getState().sessionId !== null) void reviewState.getState().refresh();
      void measuresState.getState().refresh();
      return;
  }
}

/** Keeps every slice in step with the backend; the returned function stops that. */
export const listen = (): (() => void) => rackside().onEvent(onEvent);
