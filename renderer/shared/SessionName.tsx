import type { SessionSummary } from '../../electron/contract/desk.ts';
import { useIsMine } from '../state/mine.ts';
import { sayDesk } from '../words/sayDesk.ts';

/** Whose session it is and its title; the title alone for one's own. */
export function SessionName({ session }: { readonly session: SessionSummary }) {
  const isMine = useIsMine();
  const { traineeName, title } = session;
  if (isMine(session)) {
    const name = title === '' ? sayDesk('mySession') : title;
    return (
      <span className="cut" title={name}>
        {name}
      </span>
    );
  }
  return (
    <>
      <span className="cut" title={traineeName}>
        {traineeName}
      </span>
      {title !== '' && (
        <span className="soft cut" title={title}>
          {title}
        </span>
      )}
    </>
  );
}
