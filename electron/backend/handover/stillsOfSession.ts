import { mkdtemp, rm } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import type { MediaTools } from '../media/index.ts';
import type { HandoverSource, HandoverWork } from './handoverSource.ts';
import type { WantedFiles } from './writeClip.ts';
import { writeClips } from './writeClips.ts';
import type { LyingStill } from './writtenClip.ts';

const stillsAlone: WantedFiles = {
  stills: true,
  clips: false,
  loops: false,
  originals: false,
  atNotes: { do: 'playOn' },
  sound: 'dropped',
  covering: { head: false, boxes: [], look: 'filled' },
};

/**
 * A picture of each remark of a session, by the flag's id, with all that is covered on the clips. A clip whose footage is
 * gone has none. Throws `cancelled` and `disk`.
 */
export async function stillsOfSession(
  tools: MediaTools,
  source: HandoverSource,
  work: HandoverWork,
): Promise<ReadonlyMap<string, LyingStill>> {
  const folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-stills-'));
  try {
    const clips = await writeClips(tools, folder, { source, wanted: stillsAlone }, work);
    return new Map(clips.flatMap(({ opened }) => [...(opened?.written.stills ?? [])]));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The files of stills by the names that documents call them. */
export const picturesOf = (stills: ReadonlyMap<string, LyingStill>): ReadonlyMap<string, Uint8Array> =>
  new Map([...stills.values()].map(({ source, jpeg }) => [source, jpeg]));

/** Names of the stills' files by the flag's id. */
export const namesOf = (stills: ReadonlyMap<string, LyingStill>): ReadonlyMap<string, string> =>
  new Map([...stills].map(([flagId, { source }]) => [flagId, source]));
