import { Download } from 'lucide-react';
import { type RefObject, useEffect, useState } from 'react';
import { type DocumentFormat, type DocumentKind, showsStills } from '../../electron/contract/documents.ts';
import type { NameMode } from '../../engine/names/shownName.ts';
import type { Review } from '../../engine/review/review.ts';
import { Tick } from '../base/fields.tsx';
import { rackside } from '../bridge/rackside.ts';
import { statusState } from '../bridge/statusState.ts';
import { PaperField } from '../shared/PaperField.tsx';
import { paperState } from '../state/preferences.ts';
import { sayLetter } from '../words/sayLetter.ts';
import { sayProblem, sayUndelivered } from '../words/sayProblem.ts';
import { formatsOf, sayFormat, suggestedName } from './formats.ts';

type SaveDocumentProps = {
  readonly sessionId: string;
  readonly document: DocumentKind;
  readonly review: Review;
  readonly names: NameMode;
  /** The letter as it was sent that is on screen; null for what it says now. */
  readonly sent: number | null;
  /** Set to what saves it, for the key that does. */
  readonly run: RefObject<() => Promise<void>>;
};

/** Saves what is shown, in a format it comes in; the window asks where. */
export function SaveDocument({ sessionId, document, review, names, sent, run }: SaveDocumentProps) {
  const [said, setSaid] = useState('');
  const [stills, setStills] = useState(true);
  const [chosen, setChosen] = useState<DocumentFormat>('pdf');
  const formats = formatsOf(document);
  const format = formats.includes(chosen) ? chosen : 'pdf';
  const pictured = sent === null && showsStills(document, format);
  const save = async (): Promise<void> => {
    setSaid(sayLetter('saving'));
    const reply = await rackside().askWindow('documents.save', {
      sessionId,
      document,
      format,
      paper: paperState.getState().paper,
      stills: pictured && stills,
      ...(sent !== null && { sentVersion: sent }),
      suggestedName: suggestedName(review, document, { format, sent, names }),
    });
    if (!reply.ok) setSaid(sayProblem(reply.problem));
    else {
      const { path, failed = [] } = reply.value;
      setSaid(path === null ? '' : sayLetter('savedTo', { path }));
      if (failed.length > 0) statusState.getState().tell(failed.map(sayUndelivered).join(' '));
    }
  };
  useEffect(() => {
    run.current = save;
  });
  return (
    <fieldset className="save-document" aria-label={sayLetter('saveThis')}>
      <label className="field-inline">
        <span className="visually-hidden">{sayLetter('format')}</span>
        <select
          value={format}
          onChange={(event) => setChosen(formats.find((one) => one === event.target.value) ?? 'pdf')}
        >
          {formats.map((one) => (
            <option key={one} value={one}>
              {sayFormat(one)}
            </option>
          ))}
        </select>
      </label>
      {format === 'pdf' && <PaperField named="unseen" />}
      {pictured && (
        <Tick checked={stills} onChange={setStills}>
          {sayLetter('stills')}
        </Tick>
      )}
      <button type="button" onClick={() => void save()}>
        <Download aria-hidden="true" /> {sayLetter('save')}
      </button>
      <span role="status" className="save-said" title={said}>
        {said}
      </span>
    </fieldset>
  );
}
