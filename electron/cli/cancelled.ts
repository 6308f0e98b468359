import { ProblemError } from '../contract/reply.ts';

/** What a command ends with after Ctrl-C. */
export function cancelledError(): ProblemError {
  return new ProblemError('cancelled', 'Cancelled; nothing half made was left behind.');
}
