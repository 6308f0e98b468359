import { isSandboxComplaint, widen } from './leastRights.ts';
import type { MediaTools } from './mediaTools.ts';
import { cancelledWork } from './refuse.ts';
import { fileAddress, safeInputOptions } from './safeInput.ts';
import { runTool } from './startTool.ts';

/** Limits of silence and output of one run: a hostile file must not hold the backend up or fill its memory. */
const idleMs = 120_000;
const maxOutput = 256 * 1024 * 1024;

export type ProbeOutput =
  | { readonly kind: 'read'; readonly stdout: string; readonly stderr: string }
  | { readonly kind: 'failed'; readonly stderr: string };

/** Runs ffprobe on a file with the given `show` options. Throws only when cancelled. */
export async function runFfprobe(
  tools: MediaTools,
  file: string,
  show: readonly string[],
  signal: AbortSignal | undefined,
): Promise<ProbeOutput> {
  const args = ['-v', 'error', ...safeInputOptions, ...show, '-i', fileAddress(file)];
  const limits = { idleMs, maxOutput, signal };
  let run = await runTool(tools.ffprobe, args, limits);
  // Every clip comes by here first, so that what reads it later knows.
  if (run.failed && isSandboxComplaint(run.stderr)) {
    widen([tools.ffmpeg, tools.ffprobe]);
    run = await runTool(tools.ffprobe, args, limits);
  }
  const { failed, stdout, stderr } = run;
  if (signal?.aborted === true) throw cancelledWork();
  return failed ? { kind: 'failed', stderr } : { kind: 'read', stdout, stderr };
}
