import type { ClipMedia } from '../../contract/clips.ts';
import { clipMediaOf } from './clipMedia.ts';
import { listClips } from './clips.ts';
import type { Reading } from './connection.ts';
import { listEntries } from './entries.ts';
import type { LibraryFolder } from './folder.ts';
import { findFootage } from './footage.ts';

/** What the player needs to know of each clip of a session, in the session's order. */
export function mediaOfSession(reading: Reading, folder: LibraryFolder, sessionId: string): ClipMedia[] {
  return listEntries(reading, sessionId)
    .flatMap((entry) => listClips(reading, entry.id))
    .map((clip) => {
      const footage = clip.footage_id === null ? undefined : findFootage(reading, clip.footage_id);
      return clipMediaOf(folder, clip, footage);
    });
}
