import path from 'node:path';
import { baseFolder, type Host } from '../run/host.ts';
import { done, type Outcome, outcomeOf } from '../run/outcome.ts';
import { makeProgress } from '../run/progress.ts';
import { buildProgram } from './buildProgram.ts';

/** Runs one command of the command line and gives its exit code. Never throws. */
export async function runCommandLine(args: readonly string[]): Promise<number> {
  const controller = new AbortController();
  const stop = () => {
    // A second Ctrl-C does not wait for the tidying up.
    if (controller.signal.aborted) process.exit(130);
    controller.abort();
  };
  process.on('SIGINT', stop);
  process.on('SIGTERM', stop);

  const folder = baseFolder(process.env, process.cwd());
  const progress = makeProgress(process.stderr);
  const host: Host = {
    appFolder: path.resolve(import.meta.dirname, '../../..'),
    resolve: (name) => path.resolve(folder, name),
    print: (content) => void process.stdout.write(content),
    say: (line) => {
      progress.clear();
      process.stderr.write(`${line}\n`);
    },
    progress,
    signal: controller.signal,
  };
  const outcome = await settle(buildProgram(host).parseAsync(args, { from: 'user' }));
  progress.clear();
  if (controller.signal.aborted) return 130;
  if (outcome.line !== '') process.stderr.write(`${outcome.line}\n`);
  return outcome.code;
}

async function settle(work: Promise<unknown>): Promise<Outcome> {
  try {
    await work;
    return done;
  } catch (error) {
    return outcomeOf(error);
  }
}
