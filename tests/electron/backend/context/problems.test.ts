import { expect, it, vi } from 'vitest';
import { problemOf } from '../../../../electron/backend/context/problems.ts';
import { ProblemError } from '../../../../electron/contract/reply.ts';
import { sayProblem } from '../../../../engine/wording/sayProblem.ts';

const failing = (code: string) => Object.assign(new Error('at /some/path.ts:12'), { code });

// The codes are those of sqlite.org/rescode.html and of Node's system errors.
it.each([
  ['ENOSPC', 'disk', /disk .*is full/],
  ['SQLITE_FULL', 'disk', /disk .*is full/],
  ['SQLITE_IOERR_WRITE', 'disk', /check the disk/],
  ['SQLITE_READONLY', 'disk', /The library’s folder is read-only.*make it writable/],
  ['SQLITE_PERM', 'disk', /no permission for the library’s folder/],
  ['SQLITE_CORRUPT', 'library-damaged', /damaged/],
])('tells %s in plain words', (code, problem, sentence) => {
  const told = problemOf(failing(code), 'flags.add');
  expect(told.code).toBe(problem);
  expect(sayProblem(told.message, 'en')).toMatch(sentence);
});

it('names the folder that the disk refused, and why', () => {
  const refusedAt = (code: string, at: string): string =>
    sayProblem(problemOf(Object.assign(failing(code), { path: at }), 'a job').message, 'en');
  expect(refusedAt('ENOSPC', '/media/stick/clips/a.mp4')).toContain('The disk that holds “/media/stick/clips” is full');
  expect(refusedAt('EACCES', '/media/stick/clips/a.mp4')).toContain('no permission for “/media/stick/clips”');
  expect(refusedAt('EROFS', '/media/stick/a.mp4')).toContain('“/media/stick” is read-only');
});

it('tells nothing of what no one foresaw but that it happened, and keeps the details for stderr', () => {
  const stderr = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const told = problemOf(failing('ODD'), 'flags.add');
  expect(told.code).toBe('internal');
  expect(JSON.stringify(told)).not.toContain('/some/path');
  expect(stderr.mock.calls.join('')).toMatch(/flags\.add: .*\/some\/path/);
  stderr.mockRestore();
});

it('passes a problem on as it is', () => {
  const { problem } = new ProblemError('conflict', 'nothingToUndo');
  expect(problemOf(ProblemError.of(problem), 'history.undo')).toEqual({
    code: 'conflict',
    message: { id: 'nothingToUndo', values: {} },
  });
});
