import { Send } from 'lucide-react';
import { dayOf } from '../base/figures.ts';
import { CommandButton } from '../commands/CommandButton.tsx';
import { availabilityOf, runCommand } from '../commands/command.ts';
import type { Letter } from '../state/letterState.ts';
import { sayLetter } from '../words/sayLetter.ts';
import { markSent } from './letterCommands.ts';
import type { LetterContext } from './letterContext.ts';

type SentLettersProps = {
  readonly context: LetterContext;
  readonly letter: Letter;
  /** The version shown in place of the letter as it is now; null = as it is now. */
  readonly shown: number | null;
  readonly onShow: (version: number | null) => void;
};

/** Keeps the letter as it is now for good, and lists those kept before. */
export function SentLetters({ context, letter, shown, onShow }: SentLettersProps) {
  const next = letter.sent.length + 1;
  const stale = letter.paragraphs.filter((line) => line.stale).length;
  return (
    <section className="sent-letters" aria-label={sayLetter('sentLetters')}>
      <h2>{sayLetter('sent')}</h2>
      <p className="soft">{sayLetter('sentWords')}</p>
      {stale > 0 && <p role="note">{sayLetter('staleCount', { count: stale })}</p>}
      <CommandButton
        command={markSent}
        availability={availabilityOf(markSent, context)}
        words={next > 1 ? sayLetter('markSentAgain', { version: next }) : sayLetter('markSent')}
        shows="words"
        onRun={() => runCommand(markSent, context)}
      >
        <Send aria-hidden="true" />
      </CommandButton>
      <ul>
        {letter.sent.map((sent) => (
          <li key={sent.version}>
            <button
              type="button"
              className="quiet-button"
              aria-pressed={shown === sent.version}
              onClick={() => onShow(shown === sent.version ? null : sent.version)}
            >
              {sayLetter(sent.mark === '' ? 'version' : 'versionAndMark', {
                version: sent.version,
                date: dayOf(sent.sentAt),
                mark: sent.mark,
              })}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
