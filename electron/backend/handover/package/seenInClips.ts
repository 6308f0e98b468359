import { mkdtemp, rm } from 'node:fs/promises';
import path from 'node:path';
import type { SetMeasurement } from '../../../../engine/motion/measurement.ts';
import type { Undelivered } from '../../../contract/handover.ts';
import type { MediaTools } from '../../media/tools/mediaTools.ts';
import type { HandoverSource, HandoverWork } from '../source/handoverSource.ts';
import type { StillFile } from './clipParts.ts';
import type { WantedFiles } from './writeClip.ts';
import { writeClips } from './writeClips.ts';

/** What the clips of a session show. */
export type SeenInClips = {
  /** A picture of each remark, by the flag's id, with all that is covered on the clips. */
  readonly stills: ReadonlyMap<string, StillFile>;
  /** By the clip's id. */
  readonly measures: ReadonlyMap<string, SetMeasurement>;
  /** Clips that show nothing, and why. */
  readonly failed: readonly Undelivered[];
};

const nothing: WantedFiles = {
  stills: false,
  clips: false,
  loops: false,
  narrated: false,
  originals: false,
  atNotes: { do: 'playOn' },
  sound: 'dropped',
  covering: { head: false, boxes: [], look: 'filled' },
};

/** Opens the clips of a session once, for what is measured in them and, where wanted, for stills. Throws `cancelled` and `disk`. */
export async function seenInClips(
  tools: MediaTools,
  source: HandoverSource,
  { stills }: Pick<WantedFiles, 'stills'>,
  work: HandoverWork,
): Promise<SeenInClips> {
  const folder = await mkdtemp(path.join(tools.temporary, 'rackside-stills-'));
  try {
    const clips = await writeClips(tools, folder, { source, wanted: { ...nothing, stills } }, work);
    return {
      stills: new Map(clips.flatMap(({ opened }) => [...(opened?.written.stills ?? [])])),
      measures: new Map(
        clips.flatMap(({ clipId, opened }) => (opened?.measurement ? [[clipId, opened.measurement] as const] : [])),
      ),
      failed: clips.flatMap(({ failed }) => failed),
    };
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The files of stills by the names that documents call them. */
export const picturesOf = (stills: SeenInClips['stills']): ReadonlyMap<string, Uint8Array> =>
  new Map([...stills.values()].map(({ source, jpeg }) => [source, jpeg]));
