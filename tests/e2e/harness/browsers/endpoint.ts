import type { ChildProcess } from 'node:child_process';

/** Waits until a browser says on standard error where it can be driven; `before` stands before the address. */
export function saidEndpoint(child: ChildProcess, before: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let words = '';
    child.stderr?.on('data', (chunk: Buffer) => {
      words = (words + chunk.toString()).slice(-20_000);
      const [, said] = words.split(before);
      const address = /^ (ws:\/\/\S+)\s/.exec(said ?? '')?.[1];
      if (address !== undefined) resolve(address);
    });
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`The browser ended at once with ${code}: ${words.slice(-2000)}`)));
  });
}
