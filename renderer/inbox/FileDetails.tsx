import { arrivalAddress } from '../../electron/contract/addresses.ts';
import type { InboxFile } from '../../electron/contract/inbox.ts';
import { momentOf } from '../base/figures.ts';
import { sayInbox } from '../words/sayInbox.ts';
import type { InboxColumn } from './inboxColumns.ts';
import { type PlacementNames, sayGuess } from './placementWords.ts';

type FileDetailsProps = {
  readonly file: InboxFile;
  readonly columns: readonly InboxColumn[];
  readonly names: PlacementNames;
};

/** The clip at the cursor, large enough to be told, and what each guess rests on. */
export function FileDetails({ file, columns, names }: FileDetailsProps) {
  const guesses = columns.flatMap((column) => {
    const guess = column === 'file' ? null : sayGuess(column, file, names);
    return guess === null ? [] : [{ column, ...guess }];
  });
  return (
    <section aria-label={file.name} className="inbox-details">
      {file.hasPoster && <img className="inbox-large" src={arrivalAddress(file.arrivalId, 'poster')} alt="" />}
      <h2 className="inbox-path">{file.name}</h2>
      <p className="soft">{sayInbox('filmedBy', { by: file.recordedBy, when: momentOf(file.recordedAt) })}</p>
      <p className="soft inbox-path">{sayInbox('liesIn', { folder: file.folder })}</p>
      <dl className="inbox-why">
        {guesses.map(({ column, value, why }) => (
          <div key={column}>
            <dt>{value}</dt>
            <dd className="soft">{why}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
