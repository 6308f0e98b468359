import { existsSync, readFileSync } from 'node:fs';
import os from 'node:os';
import { appVersion } from '../catalogue/appVersion.ts';
import type { Context } from '../context/context.ts';
import { verifyLibrary } from './verifyLibrary.ts';

/**
 * Everything that helps somebody else to find a fault, as one plain text: versions, what `verify` finds, and the log. No
 * names, notes, grades or footage. Throws `library-missing`, or the problem that keeps the library shut.
 */
export async function problemReport(context: Context): Promise<string> {
  const { folder } = context.library();
  const found = await verifyLibrary(context);
  const log = [folder.oldLog, folder.log].map((file) => (existsSync(file) ? readFileSync(file, 'utf8') : '')).join('');
  const sections = [
    ['Versions', versions(context, found.databaseVersion)],
    ['Library', `${found.sessions} sessions, ${found.clips} clips`],
    ['Verified', found.findings.length === 0 ? 'Sound.' : found.findings.join('\n')],
    ['Log', log === '' ? 'Empty.' : log.trimEnd()],
  ];
  return `Rackside problem report\n\n${sections.map(([title, text]) => `${title}\n${text}\n`).join('\n')}`;
}

function versions(context: Context, databaseVersion: number): string {
  return [
    `Rackside ${appVersion(context.settings.appFolder)}`,
    `Library format ${databaseVersion}, rubric versions ${context.rubricVersions().join(', ')}`,
    `Node ${process.versions.node}${process.versions.electron === undefined ? '' : `, Electron ${process.versions.electron}`}`,
    `${os.type()} ${os.release()}, ${os.arch()}`,
  ].join('\n');
}
