import { spawn } from 'node:child_process';

/**
 * Runs a program without a shell and waits for it.
 *
 * @throws Error with the program's last words when it can't start or fails
 */
export function runTool(program: string, args: readonly string[]): Promise<void> {
  return new Promise((resolve, reject) => {
    const child = spawn(program, args, { stdio: ['ignore', 'ignore', 'pipe'] });
    let words = '';
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      words = (words + text).slice(-2000);
    });
    child.once('error', (error) => reject(new Error(`${program} can't be run: ${error.message}`)));
    child.once('close', (code) => {
      if (code === 0) return resolve();
      const lastLine = words.trim().split('\n').at(-1) ?? '';
      reject(new Error(`${program} failed${lastLine === '' ? '' : `: ${lastLine}`}`));
    });
  });
}
