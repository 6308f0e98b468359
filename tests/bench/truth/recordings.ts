import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
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
  /** False: null in place of looking at a clip that is not kept. */
  readonly mayLook: boolean;
  /** True: looks even where a recording is kept. */
  readonly again: boolean;
};

/**
 * Disc and joints of a clip. They are kept by the clip's contents, the method's name and the code that looks, so that a
 * change of anything else measures again within a moment.
 */
export async function recordingOfFile(
  file: string,
  probe: ClipProbe,
  { tools, mayLook, again }: HowToRecord,
): Promise<Recording | null> {
  const clip = createHash('sha256').update(readFileSync(file)).digest('hex').slice(0, 16);
  const disc = again ? undefined : read(clip, 'disc').disc;
  const joints = again ? undefined : read(clip, 'joints').joints;
  if (disc && joints) return recordingOf({ disc, joints });
  if (!mayLook) return null;
  // Joints are looked for near the disc, so they are never recorded without it.
  const wanted = joints ? (['disc'] as const) : (['disc', 'joints'] as const);
  const recorded = await recordFile(tools, file, probe, wanted);
  keep(clip, recorded);
  return recordingOf({ ...(joints && { joints }), ...recorded });
}

function placeOf(clip: string, part: 'disc' | 'joints'): string {
  const method = currentMethods[part].replaceAll(/[^\w-]/g, '_');
  return path.join(folder, `${clip}-${part}-${method}-${looksOf[part]}.json.gz`);
}

function read(clip: string, part: 'disc' | 'joints'): v.InferOutput<typeof partsSchema> {
  const file = placeOf(clip, part);
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
