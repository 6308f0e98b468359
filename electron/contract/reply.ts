import * as v from 'valibot';
import { type Message, type MessageValues, messageSchema } from '../../engine/message/message.ts';
import { isProblemId, type ProblemId, sayProblem } from '../../engine/wording/sayProblem.ts';

/** Why a request failed; the code decides what the caller can do, the message is for people. */
export const problemCodes = [
  'bad-request',
  'not-found',
  'conflict',
  'bad-media',
  'bad-review',
  'library-busy',
  'library-damaged',
  'library-newer',
  'library-missing',
  'disk',
  'cancelled',
  'backend-gone',
  'internal',
] as const;

export type ProblemCode = (typeof problemCodes)[number];

export type Problem = {
  readonly code: ProblemCode;
  /** What happened, what is safe, what to do: said in a language by `sayProblem`. */
  readonly message: Message;
};

export const problemSchema: v.GenericSchema<unknown, Problem> = v.strictObject({
  code: v.picklist(problemCodes),
  message: messageSchema,
});

/** What crosses a border: a value, or a problem as data. */
export type Reply<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** Thrown inside one side only; turned into a `Problem` at the border. Its own text is English, for the log and the command line. */
export class ProblemError extends Error {
  readonly problem: { readonly code: ProblemCode; readonly message: Message<ProblemId> };

  constructor(code: ProblemCode, id: ProblemId, values: MessageValues = {}, options?: ErrorOptions) {
    super(sayProblem({ id, values }, 'en'), options);
    this.name = 'ProblemError';
    this.problem = { code, message: { id, values } };
  }

  /** A problem that came as data, to be thrown on. */
  static of({ code, message: { id, values } }: Problem, options?: ErrorOptions): ProblemError {
    return isProblemId(id)
      ? new ProblemError(code, id, values, options)
      : new ProblemError(code, 'unforeseen', {}, options);
  }

  /** A problem in words that stand nowhere else: those of the command line, which speaks English alone. */
  static inWords(code: ProblemCode, sentence: string, options?: ErrorOptions): ProblemError {
    return new ProblemError(code, 'asWritten', { sentence }, options);
  }
}
