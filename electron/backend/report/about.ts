import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import * as v from 'valibot';
import { ProblemError } from '../../contract/reply.ts';
import { appVersion } from '../catalogue/appVersion.ts';
import { findMediaTools, type MediaTools } from '../media/tools/mediaTools.ts';

/** What Rackside works with; programs are null where they are not there. */
export type AboutFacts = {
  readonly version: string;
  readonly tools: MediaTools | null;
  readonly node: string;
  readonly onnxRuntime: string;
};

/** Looks what this copy of Rackside works with, without a library. */
export async function aboutFacts(appFolder: string): Promise<AboutFacts> {
  const tools = await findMediaTools().catch((error: unknown) => {
    if (error instanceof ProblemError) return null;
    throw error;
  });
  return { version: appVersion(appFolder), tools, node: process.versions.node, onnxRuntime: onnxRuntimeVersion() };
}

const require = createRequire(import.meta.url);
const packageSchema = v.object({ version: v.string() });

/** From its package's description, so that it need not be loaded. */
function onnxRuntimeVersion(): string {
  try {
    return v.parse(packageSchema, require('onnxruntime-node/package.json')).version;
  } catch {
    return 'unknown';
  }
}

/** The notices of what others made: in a package they lie where they do in a checkout. */
export function readNotices(appFolder: string): string {
  try {
    return readFileSync(path.join(appFolder, 'electron', 'notices', 'THIRD-PARTY.md'), 'utf8');
  } catch (cause) {
    throw new ProblemError('not-found', 'noNotices', {}, { cause });
  }
}
