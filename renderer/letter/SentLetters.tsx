import { Send } from 'lucide-react';
import { dayOf } from '../base/figures.ts';
import { mutate } from '../bridge/mutate.ts';
import type { Letter } from '../state/letterState.ts';

type SentLettersProps = {
  readonly sessionId: string;
  readonly letter: Letter;
  /** The version shown in place of the letter as it is now; null = as it is now. */
  readonly shown: number | null;
  readonly onShow: (version: number | null) => void;
};

/** Keeps the letter as it is now for good, and lists those kept before. */
export function SentLetters({ sessionId, letter, shown, onShow }: SentLettersProps) {
  const next = letter.sent.length + 1;
  const stale = letter.paragraphs.filter((line) => line.stale).length;
  return (
    <section className="sent-letters" aria-label="Sent letters">
      <h2>Sent</h2>
      <p className="soft">
        A letter marked as sent is kept with its flags and its rubric, and never changes. A correction is the next
        version.
      </p>
      {stale > 0 && (
        <p role="note">
          {stale === 1 ? 'One paragraph you wrote rests' : `${stale} paragraphs you wrote rest`} on something that has
          changed since: look at it before you send.
        </p>
      )}
      <button type="button" onClick={() => void mutate('letters.send', { sessionId })}>
        <Send aria-hidden="true" /> Mark as sent{next > 1 ? `, version ${next}` : ''}
      </button>
      <ul>
        {letter.sent.map((sent) => (
          <li key={sent.version}>
            <button
              type="button"
              className="quiet-button"
              aria-pressed={shown === sent.version}
              onClick={() => onShow(shown === sent.version ? null : sent.version)}
            >
              Version {sent.version}, {dayOf(sent.sentAt)}
              {sent.mark === '' ? '' : `, ${sent.mark}`}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
