import path from 'node:path';
import { type App, utilityProcess } from 'electron';

/** Runs a command on the runtime's own Node, as the commands of a checkout run on Node, and ends the program with its exit code. */
export async function runCommand(app: App, appFolder: string, words: readonly string[]): Promise<void> {
  await app.whenReady();
  const script = path.join(appFolder, 'dist', 'cli.mjs');
  const child = utilityProcess.fork(script, [...words], { serviceName: 'Rackside command', stdio: 'inherit' });
  child.once('exit', (code) => app.exit(code));
}
