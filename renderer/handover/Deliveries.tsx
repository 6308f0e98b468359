import { Download, FolderOpen } from 'lucide-react';
import { useState } from 'react';
import { useShallow } from 'zustand/react/shallow';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { Job } from '../../electron/contract/jobs.ts';
import { withinSentence } from '../../engine/wording/wordings.ts';
import { dayOf, momentOf, plain } from '../base/figures.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { JobRow } from '../shared/JobRow.tsx';
import { sayNameMode } from '../shared/NamesField.tsx';
import { handoverState } from '../state/handoverState.ts';
import { isOpenJob, jobsState } from '../state/jobsState.ts';
import { deskLanguage } from '../words/deskLanguage.ts';
import { sayHandover } from '../words/sayHandover.ts';
import { sayJob } from '../words/sayJob.ts';
import { sayProblem, sayUndelivered } from '../words/sayProblem.ts';

/** The handovers under way, and those that ended while the window was open: where each lies, and what is missing. */
export function HandoverJobs() {
  const started = handoverState((state) => state.started);
  const jobs = jobsState(
    useShallow((state) =>
      state.jobs.filter((job) => job.kind === 'handover' && (isOpenJob(job) || started.includes(job.id))),
    ),
  );
  if (jobs.length === 0) return null;
  return (
    <section aria-label={sayHandover('handovers')}>
      <h2>{sayHandover('handovers')}</h2>
      <ul className="job-list">
        {[...jobs]
          .reverse()
          .map((job) =>
            job.state === 'done' ? <Delivered key={job.id} job={job} /> : <JobRow key={job.id} job={job} />,
          )}
      </ul>
    </section>
  );
}

function Delivered({ job }: { readonly job: Job }) {
  const { sessionId } = job;
  const delivery = handoverState((state) =>
    sessionId === null ? undefined : state.handed[sessionId]?.deliveries.find(({ jobId }) => jobId === job.id),
  );
  return (
    <li className="job-row" data-testid="delivered" data-job={job.id}>
      <div className="job-words">
        <strong>{sayJob(job.title)}</strong>
        {delivery === undefined ? (
          <span className="soft">{sayHandover('done')}</span>
        ) : (
          <span className="soft">{sayHandover('versionAt', { version: delivery.version, path: delivery.path })}</span>
        )}
        {delivery?.failed.map((part) => (
          <span key={`${part.clip}/${part.sentence}`} className="delivery-failed" role="alert">
            <strong>{part.clip}:</strong> {sayUndelivered(part)}
          </span>
        ))}
      </div>
      {sessionId !== null && delivery !== undefined && (
        <button type="button" className="quiet-button" onClick={() => void showInFolder(sessionId, job.id)}>
          <FolderOpen aria-hidden="true" /> {sayHandover('show')}
        </button>
      )}
    </li>
  );
}

/** Every version of a session as it was handed over, with where each was written, the newest first. */
export function HandedOverList({ session }: { readonly session: SessionSummary }) {
  const handed = handoverState((state) => state.handed[session.id]);
  const [said, setSaid] = useState('');
  if (handed === undefined) return <p className="soft">{sayHandover('reading')}</p>;
  const save = async (version: number): Promise<void> => {
    setSaid('');
    const reply = await rackside().askWindow('handover.saveKept', {
      sessionId: session.id,
      version,
      suggestedName: `handover-${session.date}-version-${version}`,
    });
    if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
    else if (reply.value.path !== null) setSaid(sayHandover('savedTo', { path: reply.value.path }));
  };
  return (
    <>
      <ul className="handed-over" aria-label={sayHandover('handedOverTo', { name: session.traineeName })}>
        {[...handed.versions].reverse().map((one) => (
          <li key={one.version}>
            <div className="handed-over-head">
              <strong>{sayHandover('version', { version: one.version })}</strong>
              <span className="soft">
                {sayHandover('madeWith', {
                  date: dayOf(one.handedAt),
                  letter: one.letterVersion,
                  rubric: one.rubricVersion,
                  names: withinSentence(deskLanguage.getState().language, sayNameMode(one.names)),
                })}
              </span>
              <button
                type="button"
                className="quiet-button"
                aria-label={sayHandover('saveAsItWasOf', { version: one.version })}
                title={sayHandover('checksum', { sum: one.sha256 })}
                onClick={() => void save(one.version)}
              >
                <Download aria-hidden="true" /> {sayHandover('saveAsItWas')}
              </button>
            </div>
            <ul>
              {handed.deliveries
                .filter(({ version }) => version === one.version)
                .map((delivery) => (
                  <li key={delivery.jobId}>
                    <span className="delivery-path">{delivery.path}</span>
                    <span className="soft figure">
                      {sayHandover('deliveredAt', {
                        moment: momentOf(delivery.deliveredAt),
                        megabytes: plain(delivery.bytes / 1_000_000),
                      })}
                    </span>
                    <button
                      type="button"
                      className="quiet-button"
                      aria-label={sayHandover('showOf', { path: delivery.path })}
                      onClick={() => void showInFolder(session.id, delivery.jobId)}
                    >
                      <FolderOpen aria-hidden="true" /> {sayHandover('show')}
                    </button>
                    {delivery.failed.map((part) => (
                      <p key={`${part.clip}/${part.sentence}`} className="delivery-failed">
                        <strong>{part.clip}:</strong> {sayUndelivered(part)}
                      </p>
                    ))}
                  </li>
                ))}
            </ul>
          </li>
        ))}
      </ul>
      <p role="status" className="delivery-path">
        {said}
      </p>
    </>
  );
}

/** Shows in the system's file manager where a handover was written. */
async function showInFolder(sessionId: string, jobId: string): Promise<void> {
  const reply = await rackside().askWindow('handover.show', { sessionId, jobId });
  if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
}
