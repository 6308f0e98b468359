import { reviewState } from '../state/reviewState.ts';
import { screenState } from '../state/screenState.ts';
import { sayApp } from '../words/sayApp.ts';

/** In place of a session that is being read; the way back where it can't be. */
export function SessionWait({ words }: { readonly words: string }) {
  const unread = reviewState((state) => state.unread);
  if (!unread) return <main className="screen-wait">{words}</main>;
  return (
    <main className="screen-wait">
      <h1>{sayApp('sessionUnread')}</h1>
      <button type="button" className="primary" onClick={() => screenState.getState().go({ kind: 'desk' })}>
        {sayApp('toDesk')}
      </button>
    </main>
  );
}
