import { Download } from 'lucide-react';
import { useState } from 'react';
import type { DocumentFormat, DocumentKind } from '../../electron/contract/requests.ts';
import type { Review } from '../../engine/review/review.ts';
import { rackside } from '../bridge/rackside.ts';
import { formatsOf, formatWords, suggestedName } from './formats.ts';

type SaveDocumentProps = {
  readonly sessionId: string;
  readonly document: DocumentKind;
  readonly review: Review;
  /** The letter as it was sent that is on screen; null for what it says now. */
  readonly sent: number | null;
};

/** Saves what is shown, in the formats it comes in; the window asks where. */
export function SaveDocument({ sessionId, document, review, sent }: SaveDocumentProps) {
  const [said, setSaid] = useState('');
  const save = async (format: DocumentFormat): Promise<void> => {
    setSaid('Saving');
    const reply = await rackside().askWindow('documents.save', {
      sessionId,
      document,
      format,
      ...(sent !== null && { sentVersion: sent }),
      suggestedName: suggestedName(review, document, { format, sent }),
    });
    if (!reply.ok) setSaid(reply.problem.sentence);
    else setSaid(reply.value.path === null ? '' : `Saved to ${reply.value.path}`);
  };
  return (
    <fieldset className="save-document" aria-label={`Save the ${document}`}>
      {formatsOf[document].map((format) => (
        <button key={format} type="button" onClick={() => void save(format)}>
          <Download aria-hidden="true" /> Save {formatWords[format]}
        </button>
      ))}
      <span role="status" className="save-said">
        {said}
      </span>
    </fieldset>
  );
}
