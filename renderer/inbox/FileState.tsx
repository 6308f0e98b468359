import type { InboxFile } from '../../electron/contract/inbox.ts';
import { day } from '../base/figures.ts';
import { mutate } from '../bridge/mutate.ts';
import { useIsSelfReview } from '../state/mine.ts';
import { screenState } from '../state/screenState.ts';
import { sayInbox } from '../words/sayInbox.ts';
import { sayProblem } from '../words/sayProblem.ts';
import type { Hindrance } from './inboxColumns.ts';

/** Whether a file can be brought in; if not, why, and what can be done about it. */
export function FileState({ file, hindrance }: { readonly file: InboxFile; readonly hindrance: Hindrance | null }) {
  const self = useIsSelfReview();
  const readAgain = (
    <button
      type="button"
      className="quiet-button"
      onClick={() => void mutate('inbox.readAgain', { arrivalIds: [file.arrivalId] })}
    >
      {sayInbox('readAgain')}
    </button>
  );
  switch (hindrance) {
    case null:
      return <span className="soft">{sayInbox('ready')}</span>;
    case 'needsTrainee':
    case 'needsExercise':
    case 'reading':
      return <span>{sayInbox(hindrance)}</span>;
    case 'stopped':
      return (
        <>
          {sayInbox('stopped')} {readAgain}
        </>
      );
    case 'failed':
      return (
        <>
          <span className="inbox-trouble">
            {file.trouble === null ? sayInbox('stopped') : sayProblem({ message: file.trouble })}
          </span>{' '}
          {readAgain}
        </>
      );
    case 'twin':
      return (
        <>
          <Twin file={file} self={self} />{' '}
          <button
            type="button"
            className="quiet-button"
            onClick={() => void mutate('inbox.choose', { arrivalIds: [file.arrivalId], choice: { anyway: true } })}
          >
            {sayInbox('anyway')}
          </button>
        </>
      );
  }
}

/** Where the same film is: in a session, which the words lead to, or earlier in the inbox. */
function Twin({ file, self }: { readonly file: InboxFile; readonly self: boolean }) {
  const [twin] = file.twins;
  if (twin === undefined) return <span>{sayInbox('sameAs', { file: file.sameAs ?? '' })}</span>;
  const where = [...(self ? [] : [twin.traineeName]), day(twin.date)].join(', ');
  return (
    <button
      type="button"
      className="quiet-button inbox-twin"
      onClick={() => screenState.getState().go({ kind: 'review', sessionId: twin.sessionId })}
    >
      {sayInbox('twin', { where })}
    </button>
  );
}
