import { Download, FolderOpen } from 'lucide-react';
import { useState } from 'react';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import { dayOf, plain } from '../base/figures.ts';
import { nameModeWords } from '../base/NameModeOptions.tsx';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { handoverState } from '../state/handoverState.ts';
import { showInFolder } from './showInFolder.ts';

const time = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });
const megabytes = (bytes: number): string => `${plain(bytes / 1_000_000)} MB`;

/** Every version of a session as it was handed over, with where each was written, the newest first. */
export function HandedOverList({ session }: { readonly session: SessionSummary }) {
  const handed = handoverState((state) => state.handed[session.id]);
  const [said, setSaid] = useState('');
  if (handed === undefined) return <p className="soft">Reading what was handed over…</p>;
  const save = async (version: number): Promise<void> => {
    setSaid('');
    const reply = await rackside().askWindow('handover.saveKept', {
      sessionId: session.id,
      version,
      suggestedName: `handover-${session.date}-version-${version}`,
    });
    if (!reply.ok) statusState.getState().tell(reply.problem.sentence);
    else if (reply.value.path !== null) setSaid(`Saved to ${reply.value.path}`);
  };
  return (
    <>
      <ul className="handed-over" aria-label={`Handed over to ${session.traineeName}`}>
        {[...handed.versions].reverse().map((one) => (
          <li key={one.version}>
            <div className="handed-over-head">
              <strong>Version {one.version}</strong>
              <span className="soft">
                {dayOf(one.handedAt)}, letter {one.letterVersion}, rubric {one.rubricVersion},{' '}
                {nameModeWords[one.names].toLowerCase()}
              </span>
              <button
                type="button"
                className="quiet-button"
                aria-label={`Save as it was: version ${one.version}`}
                title={`SHA-256 ${one.sha256}`}
                onClick={() => void save(one.version)}
              >
                <Download aria-hidden="true" /> Save as it was
              </button>
            </div>
            <ul>
              {handed.deliveries
                .filter(({ version }) => version === one.version)
                .map((delivery) => (
                  <li key={delivery.jobId}>
                    <span className="delivery-path">{delivery.path}</span>
                    <span className="soft figure">
                      {time.format(new Date(delivery.deliveredAt))}, {megabytes(delivery.bytes)}
                    </span>
                    <button
                      type="button"
                      className="quiet-button"
                      aria-label={`Show: ${delivery.path}`}
                      onClick={() => void showInFolder(session.id, delivery.jobId)}
                    >
                      <FolderOpen aria-hidden="true" /> Show
                    </button>
                    {delivery.failed.map((part) => (
                      <p key={`${part.clip}/${part.sentence}`} className="delivery-failed">
                        <strong>{part.clip}:</strong> {part.sentence}
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
