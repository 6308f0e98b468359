import { useEffect, useState } from 'react';
import type { Result } from '../../electron/contract/requests.ts';
import { Dialog } from '../base/Dialog.tsx';
import { secondOf } from '../base/figures.ts';
import { mutate } from '../bridge/mutate.ts';
import { read } from '../bridge/read.ts';
import { reviewState } from '../state/reviewState.ts';
import { sayHistory } from '../words/sayHistory.ts';
import { sayActionName } from './sayActionName.ts';

type Acts = Result<'history.list'>;

const goToWords = ({ undone }: Acts[number]): string => sayHistory(undone ? 'redoToHere' : 'backToHere');

/** Everything that was done in a session, newest first; any of it can be gone back to. */
export function HistoryPanel({ sessionId, onClose }: { readonly sessionId: string; readonly onClose: () => void }) {
  const [acts, setActs] = useState<Acts>([]);
  const revision = reviewState((state) => state.revision);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the list is old once the session has changed
  useEffect(() => {
    void read('history.list', { sessionId }).then((list) => setActs(list ?? []));
  }, [sessionId, revision]);
  const repeat = async (name: 'history.undo' | 'history.redo', times: number): Promise<void> => {
    for (let time = 0; time < times; time += 1) if ((await mutate(name, { sessionId })) === null) return;
  };
  const done = acts.filter((one) => !one.undone);
  const undone = acts.filter((one) => one.undone && !one.dropped);
  const goTo = (id: number): void => {
    const after = done.findIndex((one) => one.id === id);
    if (after >= 0) void repeat('history.undo', after);
    else void repeat('history.redo', undone.length - undone.findIndex((one) => one.id === id));
  };
  const newest = done[0]?.id;
  return (
    <Dialog title={sayHistory('title')} onClose={onClose}>
      <ol className="history-list">
        {acts.map((one) => (
          <li key={one.id} data-undone={one.undone}>
            <span>
              {sayActionName(one.name)}
              {one.undone && <span className="soft"> {sayHistory('undone')}</span>}
            </span>
            <time className="soft" dateTime={one.at}>
              {secondOf(one.at)}
            </time>
            {!one.dropped && (
              <button
                type="button"
                className="quiet-button"
                aria-label={sayHistory('goTo', { where: goToWords(one), action: sayActionName(one.name) })}
                disabled={one.id === newest}
                onClick={() => goTo(one.id)}
              >
                {goToWords(one)}
              </button>
            )}
          </li>
        ))}
        {acts.length === 0 && <li className="soft">{sayHistory('nothing')}</li>}
      </ol>
    </Dialog>
  );
}
