import { existsSync, statSync } from 'node:fs';
import { ProblemError } from '../../contract/reply.ts';
import { all, closeReading, first, numberPragma, openReading, type Reading } from './connection.ts';
import type { LibraryFolder } from './folder.ts';

/** Marks the file as a library of this program, in the file's header. */
export const applicationId = 0x52_43_4b_53;

/** What a look at the database file found; `none` = not there, or begun and never finished. */
export type Inspection = { readonly kind: 'none' } | { readonly kind: 'sound'; readonly version: number };

/**
 * Looks at a library's file without changing it.
 *
 * Throws `library-damaged` when it is no sound library, `library-newer` when its version is above `newestVersion`.
 */
export function inspectLibrary(folder: LibraryFolder, newestVersion: number): Inspection {
  if (!existsSync(folder.database) || statSync(folder.database).size === 0) return { kind: 'none' };
  let connection: Reading | undefined;
  try {
    connection = openReading(folder.database);
    return judge(connection, folder, newestVersion);
  } catch (error) {
    throw error instanceof ProblemError ? error : damaged(folder, error);
  } finally {
    if (connection) closeReading(connection);
  }
}

function judge(connection: Reading, folder: LibraryFolder, newestVersion: number): Inspection {
  const owner = numberPragma(connection, 'application_id');
  const version = numberPragma(connection, 'user_version');
  if (owner === 0 && version === 0 && !first(connection, 'SELECT 1 FROM sqlite_schema')) return { kind: 'none' };
  if (owner !== applicationId) {
    throw new ProblemError(
      'library-damaged',
      `"${folder.database}" is not a Rackside library, so it was not opened or changed; choose another folder.`,
    );
  }
  if (version > newestVersion) {
    throw new ProblemError(
      'library-newer',
      `The library in "${folder.root}" was used by a newer Rackside, so this one leaves it alone; ` +
        'install the newer version to open it.',
    );
  }
  const findings = quickCheck(connection);
  if (findings.length > 0) throw damaged(folder, findings.join('; '));
  return { kind: 'sound', version };
}

/** What SQLite finds wrong with the file's structure; empty when it is sound. */
export function quickCheck(connection: Reading): string[] {
  const rows = all<{ quick_check: string }>(connection, 'PRAGMA quick_check(20)');
  return rows.map((row) => row.quick_check).filter((finding) => finding !== 'ok');
}

function damaged(folder: LibraryFolder, cause: unknown): ProblemError {
  return new ProblemError(
    'library-damaged',
    `The library in "${folder.root}" is damaged and was neither opened nor changed; ` +
      'its clips are safe, and the "backups" folder beside it may hold a good copy.',
    { cause },
  );
}
