import { readFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { rootFolder } from '../../../electron/launch/folders.ts';

const truthSchema = v.object({
  video: v.object({ frames: v.number() }),
  pts: v.array(v.number()),
  reps: v.array(
    v.object({
      phases_s: v.object({
        eccentric: v.tuple([v.number(), v.number()]),
        concentric: v.tuple([v.number(), v.number()]),
      }),
    }),
  ),
});

/** What is known of a clip independently of the product: the time of every frame, the reps. */
export async function readTruth(name: string): Promise<v.InferOutput<typeof truthSchema>> {
  const file = path.join(rootFolder, 'tests', 'footage', `${name}.truth.json`);
  return v.parse(truthSchema, JSON.parse(await readFile(file, 'utf8')));
}

/** The frame shown at a time: the last one that starts at or before it. */
export function frameAt(pts: readonly number[], seconds: number): number {
  return Math.max(
    0,
    pts.findLastIndex((start) => start <= seconds + 1e-6),
  );
}
