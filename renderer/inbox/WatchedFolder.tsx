import { FolderSync } from 'lucide-react';
import type { Result } from '../../electron/contract/requests.ts';
import { mutate } from '../bridge/mutate.ts';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { inboxState } from '../state/inboxState.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { sayProblem } from '../words/sayProblem.ts';

/** The folder whose new clips come in by themselves: which one it is, whether it is there, and another instead. */
export function WatchedFolder({ watch }: { readonly watch: Result<'inbox.get'>['watch'] }) {
  const choose = async (): Promise<void> => {
    const reply = await rackside().askWindow('inbox.watch', {});
    if (!reply.ok) statusState.getState().tell(sayProblem(reply.problem));
    void inboxState.getState().refresh();
  };
  const stop = async (): Promise<void> => {
    await mutate('settings.change', { watchedFolder: null });
    void inboxState.getState().refresh();
  };
  return (
    <section aria-label={sayInbox('watched')} className="inbox-watch">
      <h2>
        <FolderSync aria-hidden="true" /> {sayInbox('watched')}
      </h2>
      {watch === null ? (
        <p className="soft">{sayInbox('watchWords')}</p>
      ) : (
        <p className={watch.there ? 'soft inbox-path' : 'inbox-path'} role={watch.there ? undefined : 'alert'}>
          {watch.there ? watch.folder : sayInbox('watchGone', { folder: watch.folder })}
        </p>
      )}
      <div className="receive-buttons">
        <button type="button" onClick={() => void choose()}>
          {sayInbox(watch === null ? 'watch' : 'watchOther')}
        </button>
        {watch !== null && (
          <button type="button" className="quiet-button" onClick={() => void stop()}>
            {sayInbox('unwatch')}
          </button>
        )}
      </div>
    </section>
  );
}
