import { mostReviewText } from '../../electron/contract/comparing.ts';
import type { Result } from '../../electron/contract/requests.ts';
import { read } from '../bridge/read.ts';
import { statusState } from '../bridge/statusState.ts';

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
export async function judgementOfFile(file: File): Promise<OtherJudgement | null> {
  const name = file.name.slice(0, 200);
  const text = file.size > mostReviewText ? null : await file.text().catch(() => null);
  if (text !== null) return { kind: 'file', name, text };
  const sentence = 'could not be read as a review file of at most 5 MB, so nothing was compared; choose another.';
  statusState.getState().tell(`"${name}" ${sentence}`);
  return null;
}
