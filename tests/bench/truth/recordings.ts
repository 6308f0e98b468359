import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { gunzipSync, gzipSync } from 'node:zlib';
import * as v from 'valibot';
import { recordingOf } from '../../../electron/backend/measure/measurementOfClip.ts';
import { currentMethods } from '../../../electron/backend/measure/methods.ts';
import type { ClipProbe } from '../../../electron/backend/media/probe/probeClip.ts';
import type { MediaTools } from '../../../electron/backend/media/tools/mediaTools.ts';
import type { RecordedParts } from '../../../electron/backend/store/recordings.ts';
import { rootFolder } from '../../../electron/launch/folders.ts';
import {
  cameraPathSchema,
  discRecordingSchema,
  jointRecordingSchema,
  type Recording,
} from '../../../engine/recording/recording.ts';
import { warningSchema } from '../../../engine/recording/warnings.ts';
import { recordFile } from './recordFile.ts';
import { sourceDigest } from './sourceDigest.ts';

/** Where recordings are kept: the user's cache folder, for all checkouts together. */
const folder = path.join(process.env.XDG_CACHE_HOME ?? path.join(os.homedir(), '.cache'), 'rackside', 'truth');

const measure = path.join(rootFolder, 'electron', 'backend', 'measure');
const looksOf = {
  disc: sourceDigest([path.join(measure, 'trackDisc.ts')]),
  joints: sourceDigest(['jointReader.ts', 'jointWorker.ts'].map((file) => path.join(measure, 'joints', file))),
};

const partsSchema = v.object({
  disc: v.optional(
    v.object({
      method: v.string(),
      found: v.nullable(discRecordingSchema),
      warnings: v.array(warningSchema),
      camera: v.optional(cameraPathSchema),
    }),
  ),
  joints: v.optional(
    v.object({ method: v.string(), found: v.nullable(jointRecordingSchema), warnings: v.array(warningSchema) }),
  ),
});

export type HowToRecord = {
  readonly tools: MediaTools;
  /**
   * `keptAlone`: never looks; takes what the same method recorded last, though its code may have changed since.
   * `ifNeeded`: looks where nothing is kept. `again`: looks.
   */
  readonly look: 'keptAlone' | 'ifNeeded' | 'again';
};

export type KeptRecording = {
  readonly recording: Recording;
  /** Recorded by the same method as now, but by other code. */
  readonly isOlder: boolean;
};

/**
 * Disc and joints of a clip; null where it may not be looked at and nothing is kept. They are kept by the clip's contents,
 * the method's name and the code that looks, so that a change of anything else measures again within a moment.
 */
export async function recordingOfFile(
  file: string,
  probe: ClipProbe,
  { tools, look }: HowToRecord,
): Promise<KeptRecording | null> {
  const clip = createHash('sha256').update(readFileSync(file)).digest('hex').slice(0, 16);
  const disc = look === 'again' ? undefined : read(placeOf(clip, 'disc')).disc;
  const joints = look === 'again' ? undefined : read(placeOf(clip, 'joints')).joints;
  if (disc && joints) return { recording: recordingOf({ disc, joints }), isOlder: false };
  if (look === 'keptAlone') return olderRecording(clip);
  // Joints are looked for near the disc, so they are never recorded without it.
  const wanted = joints ? (['disc'] as const) : (['disc', 'joints'] as const);
  const recorded = await recordFile(tools, file, probe, wanted);
  keep(clip, recorded);
  return { recording: recordingOf({ ...(joints && { joints }), ...recorded }), isOlder: false };
}

function olderRecording(clip: string): KeptRecording | null {
  const { disc } = read(newestOf(clip, 'disc'));
  const { joints } = read(newestOf(clip, 'joints'));
  return disc && joints ? { recording: recordingOf({ disc, joints }), isOlder: true } : null;
}

const startOfPlace = (clip: string, part: 'disc' | 'joints'): string =>
  `${clip}-${part}-${currentMethods[part].replaceAll(/[^\w-]/g, '_')}-`;

const placeOf = (clip: string, part: 'disc' | 'joints'): string =>
  path.join(folder, `${startOfPlace(clip, part)}${looksOf[part]}.json.gz`);

function newestOf(clip: string, part: 'disc' | 'joints'): string {
  const files = existsSync(folder) ? readdirSync(folder) : [];
  const [newest = ''] = files
    .filter((file) => file.startsWith(startOfPlace(clip, part)) && file.endsWith('.gz'))
    .map((file) => path.join(folder, file))
    .sort((one, other) => statSync(other).mtimeMs - statSync(one).mtimeMs);
  return newest;
}

function read(file: string): v.InferOutput<typeof partsSchema> {
  if (!existsSync(file)) return {};
  const kept = v.safeParse(partsSchema, JSON.parse(gunzipSync(readFileSync(file)).toString('utf8')));
  return kept.success ? kept.output : {};
}

function keep(clip: string, parts: RecordedParts): void {
  mkdirSync(folder, { recursive: true });
  for (const part of ['disc', 'joints'] as const) {
    const recorded = parts[part];
    if (recorded === undefined) continue;
    const file = placeOf(clip, part);
    const unfinished = `${file}.${process.pid}`;
    writeFileSync(unfinished, gzipSync(JSON.stringify({ [part]: recorded })));
    renameSync(unfinished, file);
  }
}
