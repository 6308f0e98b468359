import { spawn } from 'node:child_process';

export type Display = { readonly environment: NodeJS.ProcessEnv; readonly stop: () => void };

/** The display of this machine, or a virtual one of 1440 × 900 that is started for the run. */
export async function openDisplay(): Promise<Display> {
  if (process.platform !== 'linux' || (process.env.DISPLAY ?? process.env.WAYLAND_DISPLAY ?? '') !== '') {
    return { environment: {}, stop: () => {} };
  }
  const server = spawn('Xvfb', ['-displayfd', '3', '-screen', '0', '1440x900x24', '-nolisten', 'tcp'], {
    stdio: ['ignore', 'ignore', 'ignore', 'pipe'],
  });
  const number = await new Promise<string>((resolve, reject) => {
    server.once('error', () => reject(new Error('There is no display and Xvfb is not installed (Debian: xvfb).')));
    server.once('exit', (code) => reject(new Error(`Xvfb ended with ${code}`)));
    server.stdio[3]?.once('data', (text: Buffer) => resolve(text.toString().trim()));
  });
  return { environment: { DISPLAY: `:${number}` }, stop: () => void server.kill() };
}
