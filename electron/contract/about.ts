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
