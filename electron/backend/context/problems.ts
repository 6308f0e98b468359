import * as v from 'valibot';
import { type Problem, ProblemError } from '../../contract/reply.ts';

/** Any thrown thing as a problem to answer with; what no one foresaw goes to stderr whole and out as one plain sentence. */
export function problemOf(error: unknown, during: string): Problem {
  if (error instanceof ProblemError) return error.problem;
  const foreseen = foreseenProblem(error);
  if (foreseen) return foreseen;
  process.stderr.write(`${during}: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`);
  return {
    code: 'internal',
    sentence: 'Something went wrong inside Rackside, so this was not done; your library is as it was before.',
  };
}

/** Checks params against a request's schema. Throws `bad-request` naming the field. */
export function checkParams<S extends v.GenericSchema>(name: string, schema: S, params: unknown): v.InferOutput<S> {
  const parsed = v.safeParse(schema, params);
  if (parsed.success) return parsed.output;
  const [issue] = parsed.issues;
  const field = v.getDotPath(issue);
  const where = field ? `"${field.slice(0, 60)}"` : 'what was given';
  const message = issue.message.length > 160 ? `${issue.message.slice(0, 160)}…` : issue.message;
  throw new ProblemError(
    'bad-request',
    `The request ${name} was refused and nothing was changed: ${where} is not as it must be (${message}).`,
  );
}

/** What the disk under the library, or the database's file, can do at any time. */
function foreseenProblem(error: unknown): Problem | undefined {
  const code = error instanceof Error && 'code' in error ? String(error.code) : '';
  if (code === 'ENOSPC' || code === 'EDQUOT' || code === 'SQLITE_FULL') {
    return { code: 'disk', sentence: 'The disk is full, so nothing was saved; make room and try again.' };
  }
  if (code === 'EROFS' || code === 'EACCES' || /^SQLITE_(IOERR|READONLY|CANTOPEN)/.test(code)) {
    const sentence = 'The disk refused to read or write, so this was not done; check the disk and try again.';
    return { code: 'disk', sentence };
  }
  if (/^SQLITE_(CORRUPT|NOTADB)/.test(code)) {
    const sentence =
      'The library has become damaged on its disk, so this was not done; close Rackside and check the disk.';
    return { code: 'library-damaged', sentence };
  }
  return undefined;
}
