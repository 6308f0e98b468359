import path from 'node:path';
import { ProblemError } from '../contract/reply.ts';
import { buildChanged } from './buildChanged.ts';
import { rootFolder } from './folders.ts';
import {
  hasDisplay,
  profileFolder,
  runtimeArguments,
  runtimeEnvironment,
  sandboxTrouble,
  thisMachine,
} from './machine.ts';
import { findRuntime } from './runtime.ts';
import { mostStartMs, runWindow, startTrouble } from './windowStart.ts';

async function start(): Promise<number> {
  const machine = thisMachine();
  if (!hasDisplay(machine)) {
    throw ProblemError.inWords(
      'internal',
      'Rackside has no display to open its window on; nothing was changed. Start it on a desktop, or use "npm run demo", which needs no window.',
    );
  }
  await buildChanged();
  const runtime = await findRuntime();
  if (runtime.kind === 'fallback') {
    say("Electron's own binary could not be downloaded: using the fallback runtime, an older Electron");
  }
  const end = await runWindow({
    executable: runtime.executable,
    args: [...runtimeArguments(machine), rootFolder, ...process.argv.slice(2)],
    environment: runtimeEnvironment(machine),
    limitMs: mostStartMs,
  });
  const logFile = path.join(profileFolder(machine), 'rackside-window.log');
  const trouble = sandboxTrouble(machine, runtime.executable, end.signal) ?? startTrouble(end, logFile);
  if (trouble !== null) say(trouble);
  return end.code;
}

function say(sentence: string): void {
  process.stderr.write(`${sentence}\n`);
}

try {
  process.exitCode = await start();
} catch (error) {
  if (!(error instanceof ProblemError)) throw error;
  say(error.message);
  process.exitCode = 1;
}
