import * as v from 'valibot';
import { read } from './kinds.ts';
import { none } from './shapes.ts';

const programSchema = v.strictObject({
  /** Its own word for its version: "5.1.9-0+deb12u1", or a commit. */
  version: v.string(),
  /** Named by the environment, found on PATH, or the one that came with Rackside. */
  origin: v.picklist(['environment', 'path', 'bundled']),
  /** What it can reach: the files it is given, everything but the network, or everything. */
  reach: v.picklist(['own-files', 'no-network', 'everything']),
});

export const aboutRequests = {
  /** What Rackside works with. A program that isn't there, or doesn't run, is null. */
  'about.get': read({
    params: none,
    result: v.strictObject({
      version: v.string(),
      ffmpeg: v.nullable(programSchema),
      ffprobe: v.nullable(programSchema),
      /** The versions of Node and of the runtime of the networks. */
      node: v.string(),
      onnxRuntime: v.string(),
    }),
  }),
  /** The notices of everything that others made: `THIRD-PARTY.md`, as Markdown. */
  'about.notices': read({ params: none, result: v.strictObject({ text: v.string() }) }),
} as const;

export const runtimeSchema = v.strictObject({
  /** What a package was made from; null in a checkout. */
  build: v.nullable(v.strictObject({ commit: v.string(), date: v.string() })),
  electron: v.string(),
  chromium: v.string(),
  /** Whether the window runs in a runtime that gets no fixes any more. */
  isOutdated: v.boolean(),
  /** Where the program's data lie: the library, what is kept of the window, logs. */
  dataFolder: v.string(),
});
export type RuntimeFacts = v.InferOutput<typeof runtimeSchema>;

export const aboutWindowRequests = {
  /** What the window runs in, and what it was made from. */
  'about.runtime': { params: none, result: runtimeSchema },
} as const;
