import { runCommandLine } from './program/runCommandLine.ts';

// A closed pipe ("rackside ... | head") ends the reading, not the work; and runtime warnings are nobody's answer.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') process.exitCode = 1;
  });
}
process.removeAllListeners('warning');

const controller = new AbortController();
const stop = () => {
  // A second Ctrl-C does not wait for the tidying up.
  if (controller.signal.aborted) process.exit(130);
  controller.abort();
};
process.on('SIGINT', stop);
process.on('SIGTERM', stop);

const code = await runCommandLine(process.argv.slice(2), {
  environment: process.env,
  workingFolder: process.cwd(),
  output: process.stdout,
  messages: process.stderr,
  signal: controller.signal,
});
await Promise.all([process.stdout, process.stderr].map(flush));
process.exit(code);

/** Resolves when everything written so far has left the process, or can't any more. */
function flush(stream: NodeJS.WriteStream): Promise<void> {
  return new Promise((resolve) => {
    if (!stream.writable) resolve();
    else stream.write('', () => resolve());
  });
}
