import { realpath } from 'node:fs/promises';
import path from 'node:path';
import type { Review } from '../../../engine/review/review.ts';
import { ProblemError } from '../../contract/reply.ts';

/**
 * The footage that a review names outside its file's folder, as whole paths, each once: by an absolute path, by `..`, or by a link inside
 * the folder that leads out of it. What lies outside is not even looked for: on Windows the path may name another machine.
 */
export async function footageOutside(file: string, { entries }: Review): Promise<string[]> {
  const folder = path.dirname(file);
  const outside = new Set<string>();
  for (const clip of entries.flatMap(({ clips }) => clips)) {
    if (clip.path === undefined) continue;
    const named = path.resolve(folder, clip.path);
    const leads = isWithin(folder, named) ? await whereLinksLead(folder, named) : named;
    if (leads !== null) outside.add(leads);
  }
  return [...outside];
}

/** Throws `conflict` with the paths in its sentence where a review names footage outside that nobody has allowed. */
export async function assertFootageAllowed(file: string, review: Review, allowed: readonly string[]): Promise<void> {
  const asked = (await footageOutside(file, review)).filter((each) => !allowed.includes(each));
  if (asked.length === 0) return;
  throw new ProblemError('conflict', 'reviewFootageOutside', {
    file: path.basename(file),
    count: asked.length,
    paths: pathsInWords(asked),
  });
}

const mostQuoted = 5;

/** The first few paths, quoted, and how many there are beside them. */
function pathsInWords(paths: readonly string[]): string {
  const quoted = paths.slice(0, mostQuoted).map((each) => `“${each.replaceAll(/\p{C}/gu, '')}”`);
  return [...quoted, ...(paths.length > mostQuoted ? [`+ ${paths.length - mostQuoted}`] : [])].join(', ');
}

function isWithin(folder: string, file: string): boolean {
  const way = path.relative(folder, file);
  return way !== '..' && !way.startsWith(`..${path.sep}`) && !path.isAbsolute(way);
}

/** Where a file inside a folder really lies, if that is outside; null where it is inside or not there. */
async function whereLinksLead(folder: string, file: string): Promise<string | null> {
  try {
    const real = await realpath(file);
    return isWithin(await realpath(folder), real) ? null : real;
  } catch {
    return null;
  }
}
