import * as v from 'valibot';
import type { ProblemId } from '../../../engine/wording/sayProblem.ts';
import { type Problem, type ProblemCode, ProblemError } from '../../contract/reply.ts';

/** Any thrown thing as a problem to answer with; what no one foresaw goes to stderr whole and out as one plain sentence. */
export function problemOf(error: unknown, during: string): Problem {
  if (error instanceof ProblemError) return error.problem;
  const foreseen = foreseenProblem(error);
  if (foreseen) return foreseen;
  process.stderr.write(`${during}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
  return { code: 'internal', message: { id: 'unforeseen', values: {} } };
}

/** Checks params against a request's schema. Throws `bad-request` naming the field. */
export function checkParams<S extends v.GenericSchema>(name: string, schema: S, params: unknown): v.InferOutput<S> {
  const parsed = v.safeParse(schema, params);
  if (parsed.success) return parsed.output;
  const [issue] = parsed.issues;
  const field = v.getDotPath(issue);
  const reason = issue.message.length > 160 ? `${issue.message.slice(0, 160)}…` : issue.message;
  if (!field) throw new ProblemError('bad-request', 'refusedRequestWhole', { request: name, reason });
  throw new ProblemError('bad-request', 'refusedRequest', { request: name, field: field.slice(0, 60), reason });
}

/** What the disk under the library, or the database's file, can do at any time. */
function foreseenProblem(error: unknown): Problem | undefined {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOSPC' || code === 'EDQUOT' || code === 'SQLITE_FULL') return problem('disk', 'diskFull');
  if (code === 'EROFS' || code === 'EACCES' || /^SQLITE_(IOERR|READONLY|CANTOPEN)/.test(code)) {
    return problem('disk', 'diskRefused');
  }
  return /^SQLITE_(CORRUPT|NOTADB)/.test(code) ? problem('library-damaged', 'becameDamaged') : undefined;
}

const problem = (code: ProblemCode, id: ProblemId): Problem => ({ code, message: { id, values: {} } });
