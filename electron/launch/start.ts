import { spawn } from 'node:child_process';
import { ProblemError } from '../contract/reply.ts';
import { buildChanged } from './buildChanged.ts';
import { rootFolder } from './folders.ts';
import { hasDisplay, runtimeArguments, runtimeEnvironment, sandboxTrouble, thisMachine } from './machine.ts';
import { findRuntime } from './runtime.ts';

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
    process.stderr.write(
      "Electron's own binary could not be downloaded: using the fallback runtime, an older Electron\n",
    );
  }
  return open(runtime.executable, [...runtimeArguments(machine), rootFolder, ...process.argv.slice(2)]);
}

/** Runs the window until it is closed; gives its exit code. */
function open(executable: string, args: readonly string[]): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = spawn(executable, args, { stdio: 'inherit', env: runtimeEnvironment(thisMachine()) });
    for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
      process.on(signal, () => child.kill(signal));
    }
    child.once('error', reject);
    child.once('exit', (code, signal) => {
      const trouble = sandboxTrouble(thisMachine(), executable, signal);
      if (trouble !== null) process.stderr.write(`${trouble}\n`);
      resolve(code ?? 1);
    });
  });
}

try {
  process.exitCode = await start();
} catch (error) {
  if (!(error instanceof ProblemError)) throw error;
  process.stderr.write(`${error.message}\n`);
  process.exitCode = 1;
}
