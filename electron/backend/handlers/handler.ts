import type { CheckedParams, RequestName, Result } from '../../contract/requests.ts';
import type { Context } from '../context/context.ts';

/** Answers one request: params are checked already, the result is checked afterwards, problems are thrown. */
export type Handler<N extends RequestName> = (
  context: Context,
  params: CheckedParams<N>,
) => Result<N> | Promise<Result<N>>;
