import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { rootFolder } from '../launch/folders.ts';
import type { BuildFacts } from '../main/about/buildFacts.ts';

/** The commit that is packaged and its day; outside of a checkout it is not known. */
export async function buildFacts(): Promise<BuildFacts> {
  try {
    const { stdout } = await promisify(execFile)('git', ['log', '-1', '--format=%h %cs'], { cwd: rootFolder });
    const [commit = '', date = ''] = stdout.trim().split(' ');
    return { commit, date };
  } catch {
    return { commit: 'unknown', date: '' };
  }
}
