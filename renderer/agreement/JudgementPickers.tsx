import { FileJson } from 'lucide-react';
import { useRef } from 'react';
import { mostReviewText } from '../../electron/contract/comparing.ts';
import type { SessionSummary } from '../../electron/contract/desk.ts';
import type { Result } from '../../electron/contract/requests.ts';
import { day } from '../base/figures.ts';
import { read } from '../bridge/read.ts';
import { statusState } from '../bridge/statusState.ts';
import { sayAgreement } from '../words/sayAgreement.ts';

/** What a session is laid beside: another of the library, or a review file that was opened for this alone. */
export type OtherJudgement =
  | { readonly kind: 'session'; readonly sessionId: string }
  | { readonly kind: 'file'; readonly name: string; readonly text: string };

/** How far a session and another judgement agree; null when it can't be told, and the status line says why. */
export function comparisonOf(firstId: string, other: OtherJudgement): Promise<Result<'agreement.compare'> | null> {
  switch (other.kind) {
    case 'session':
      return read('agreement.compare', { firstId, secondId: other.sessionId });
    case 'file':
      return read('agreement.compareFile', { sessionId: firstId, name: other.name, text: other.text });
  }
}

/** The review file that a person chose; null when it is too long to be one, and the status line says so. */
async function judgementOfFile(file: File): Promise<OtherJudgement | null> {
  const name = file.name.slice(0, 200);
  const text = file.size > mostReviewText ? null : await file.text().catch(() => null);
  if (text !== null) return { kind: 'file', name, text };
  statusState.getState().tell(sayAgreement('notRead', { name }));
  return null;
}

type JudgementPickersProps = {
  readonly sessions: readonly SessionSummary[];
  readonly firstId: string | null;
  readonly other: OtherJudgement | null;
  readonly onFirst: (sessionId: string | null) => void;
  readonly onOther: (other: OtherJudgement | null) => void;
};

const called = ({ traineeName, title, date }: SessionSummary): string =>
  [traineeName, title, day(date)].filter((part) => part !== '').join(', ');

/** Which two judgements are laid side by side: a session, and another session or a colleague's review file. */
export function JudgementPickers({ sessions, firstId, other, onFirst, onOther }: JudgementPickersProps) {
  const secondId = other?.kind === 'session' ? other.sessionId : null;
  const choices = (without: string | null) =>
    sessions.map((session) => (
      <option key={session.id} value={session.id} disabled={session.id === without}>
        {called(session)}
      </option>
    ));
  return (
    <div className="agreement-pickers">
      <label>
        {sayAgreement('first')}{' '}
        <select value={firstId ?? ''} onChange={(event) => onFirst(event.target.value || null)}>
          <option value="">{sayAgreement('chooseSession')}</option>
          {choices(secondId)}
        </select>
      </label>
      <label>
        {sayAgreement('second')}{' '}
        <select
          value={secondId ?? ''}
          onChange={(event) =>
            onOther(event.target.value === '' ? null : { kind: 'session', sessionId: event.target.value })
          }
        >
          <option value="">
            {other?.kind === 'file' ? sayAgreement('file', { name: other.name }) : sayAgreement('chooseSession')}
          </option>
          {choices(firstId)}
        </select>
      </label>
      <FileChoice onOther={onOther} />
    </div>
  );
}

function FileChoice({ onOther }: Pick<JudgementPickersProps, 'onOther'>) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        <FileJson aria-hidden="true" /> {sayAgreement('colleaguesFile')}
      </button>
      <input
        ref={input}
        hidden
        type="file"
        aria-label={sayAgreement('reviewFile')}
        accept=".json,application/json"
        onChange={async ({ currentTarget }) => {
          const [file] = currentTarget.files ?? [];
          if (file === undefined) return;
          statusState.getState().dismiss();
          onOther(await judgementOfFile(file));
          // So that the same file can be chosen again once it was changed.
          currentTarget.value = '';
        }}
      />
    </>
  );
}
