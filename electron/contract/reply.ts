import * as v from 'valibot';

/** Why a request failed; the code decides what the caller can do, the sentence is for people. */
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

export const problemSchema = v.strictObject({
  code: v.picklist(problemCodes),
  /** One plain sentence: what happened, what is unharmed, what to do. */
  sentence: v.string(),
});
export type Problem = v.InferOutput<typeof problemSchema>;
export type ProblemCode = Problem['code'];

/** What crosses a border: a value, or a problem as data. */
export type Reply<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };

/** Thrown inside one side only; turned into a `Problem` at the border. */
export class ProblemError extends Error {
  readonly problem: Problem;
  constructor(code: ProblemCode, sentence: string, options?: ErrorOptions) {
    super(sentence, options);
    this.name = 'ProblemError';
    this.problem = { code, sentence };
  }
}
