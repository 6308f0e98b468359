import { execFile } from 'node:child_process';
import { cancelledWork } from './refuse.ts';
import { fileAddress, safeInputOptions } from './safeInput.ts';
import type { MediaTools } from './tools.ts';

/** Time and output limits of one run: a hostile file must not hold the backend up or fill its memory. */
const timeoutMs = 120_000;
const maxOutputBytes = 256 * 1024 * 1024;

export type ProbeOutput =
  | { readonly kind: 'read'; readonly stdout: string; readonly stderr: string }
  | { readonly kind: 'failed'; readonly stderr: string };

/** Runs ffprobe on a file with the given `show` options. Throws only when cancelled. */
export function runFfprobe(
  tools: MediaTools,
  file: string,
  show: readonly string[],
  signal: AbortSignal | undefined,
): Promise<ProbeOutput> {
  const args = ['-v', 'error', ...safeInputOptions, ...show, '-i', fileAddress(file)];
  const settings = {
    timeout: timeoutMs,
    maxBuffer: maxOutputBytes,
    windowsHide: true,
    killSignal: 'SIGKILL' as const,
    env: { ...process.env, AV_LOG_FORCE_NOCOLOR: '1' },
    ...(signal === undefined ? {} : { signal }),
  };
  return new Promise((resolve, reject) => {
    execFile(tools.ffprobe.path, args, settings, (error, stdout, stderr) => {
      if (signal?.aborted === true) return reject(cancelledWork());
      if (error === null) return resolve({ kind: 'read', stdout, stderr });
      resolve({ kind: 'failed', stderr: stderr === '' ? error.message : stderr });
    });
  });
}
