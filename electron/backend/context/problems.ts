import path from 'node:path';
import * as v from 'valibot';
import type { Message } from '../../../engine/message/message.ts';
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
  const place = placeOf(error);
  if (code === 'ENOSPC' || code === 'EDQUOT' || code === 'SQLITE_FULL') return problem('disk', 'diskFull', place);
  const why = refusals.find(([codes]) => codes.test(code))?.[1];
  if (why !== undefined) return problem('disk', 'diskRefused', { ...place, why });
  return /^SQLITE_(CORRUPT|NOTADB)/.test(code) ? problem('library-damaged', 'becameDamaged') : undefined;
}

const refusals = [
  [/^(EROFS|SQLITE_READONLY)/, 'readOnly'],
  [/^(EACCES|EPERM|SQLITE_PERM)/, 'noPermission'],
  [/^(EIO|SQLITE_IOERR|SQLITE_CANTOPEN)/, 'broken'],
] as const;

/** The folder that an error of the file system names; the database's own errors name none, and mean the library's. */
function placeOf(error: unknown): Message['values'] {
  const named = error instanceof Error && 'path' in error && typeof error.path === 'string' ? error.path : null;
  return named === null ? { place: 'library', folder: '' } : { place: 'folder', folder: path.dirname(named) };
}

const problem = (code: ProblemCode, id: ProblemId, values: Message['values'] = {}): Problem => ({
  code,
  message: { id, values },
});
