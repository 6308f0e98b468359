import { existsSync } from 'node:fs';
import path from 'node:path';
import { step } from '../../../engine/wording/sayJob.ts';
import { ProblemError } from '../../contract/reply.ts';
import type { ChangedFile, ChangedFiles } from '../store/clips.ts';
import { clipNameOf, type FootageRow, listFootageOfSession } from '../store/footage.ts';
import { isChangedOnDisk } from '../store/footageFiles.ts';
import type { Library } from '../store/library.ts';
import type { Context } from './context.ts';

/** Throws `bad-media` where a clip's file was changed on the disk since it came in. */
export async function assertUnchanged(
  library: Library,
  footage: FootageRow,
  how: 'readUnknown' | 'trustLength',
): Promise<void> {
  if (await isChangedOnDisk(library, footage, 'original', how)) {
    throw new ProblemError('bad-media', 'clipFileChanged', { clip: clipNameOf(library.reading, footage) });
  }
}

/** Playable copies that were put in line to be made anew: each once while the library is open. */
const madeAnew = new WeakMap<Library, Set<string>>();

/**
 * Which footage of a session can't be shown because its file was changed on the disk. A playable copy that was changed or lost is made anew
 * from what was filmed, while that is as it was.
 */
export async function noticeChangedFiles(context: Context, sessionId: string): Promise<ChangedFiles> {
  const library = context.library();
  const changed = new Map<string, ChangedFile>();
  for (const footage of listFootageOfSession(library.reading, sessionId)) {
    const file = await changedFileOf(library, footage);
    if (file === null) continue;
    changed.set(footage.id, file);
    if (file === 'playable') makePlayableAnew(context, footage, sessionId);
  }
  return changed;
}

async function changedFileOf(library: Library, footage: FootageRow): Promise<ChangedFile | null> {
  const isOriginalChanged = () => isChangedOnDisk(library, footage, 'original', 'trustLength');
  if (footage.plays !== 'proxy') return (await isOriginalChanged()) ? 'original' : null;
  if (footage.proxy_file === null || footage.file === null) return null;
  const isLost = !existsSync(path.join(library.folder.clips, footage.proxy_file));
  if (!isLost && !(await isChangedOnDisk(library, footage, 'playable', 'trustLength'))) return null;
  const canBeMade = existsSync(path.join(library.folder.clips, footage.file)) && !(await isOriginalChanged());
  return canBeMade ? 'playable' : 'original';
}

function makePlayableAnew(context: Context, footage: FootageRow, sessionId: string): void {
  const library = context.library();
  const asked = madeAnew.get(library) ?? new Set<string>();
  madeAnew.set(library, asked);
  // A copy that was made since then may have been changed anew.
  const copy = `${footage.id} ${footage.proxy_modified_ms}`;
  if (asked.has(copy)) return;
  asked.add(copy);
  context.jobs.add({
    kind: 'proxy',
    title: step('playableCopyOf', { clip: clipNameOf(library.reading, footage) }),
    sessionId,
    task: { do: 'proxy', footageId: footage.id },
  });
}
