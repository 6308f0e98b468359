import { type ChildProcess, spawn } from 'node:child_process';
import { Socket } from 'node:net';

/**
 * A shell that reads "start PID" and "end PID". Its input ends when the process that writes to it is gone, however that
 * came about; then it kills every program that started and has not ended.
 */
const watchScript = `
running=' '
while read -r what pid; do
  case $what in
    start) running="$running$pid " ;;
    end) running="\${running%% $pid *} \${running#* $pid }" ;;
  esac
done
[ "$running" = ' ' ] || kill -KILL $running
`;

let watch: ChildProcess['stdin'] | undefined;

/**
 * Sees to it that a program ends when this process (or thread) does, even when it is killed and can't do anything about it
 * any more. On Windows every child belongs to a job that the system ends with its parent, so there is nothing to do.
 */
export function endWithBackend(child: ChildProcess): void {
  if (process.platform === 'win32' || child.pid === undefined) return;
  watch ??= startWatch();
  const line = watch;
  line?.write(`start ${child.pid}\n`);
  child.once('exit', () => line?.write(`end ${child.pid}\n`));
}

/** Without a shell there is no watch, and programs run as they did. */
function startWatch(): ChildProcess['stdin'] {
  // A session of its own: Ctrl-C in a terminal goes to the whole group, and must not end the watch first.
  const shell = spawn('/bin/sh', ['-c', watchScript], { stdio: ['pipe', 'ignore', 'ignore'], detached: true });
  shell.on('error', () => undefined);
  shell.unref();
  shell.stdin.on('error', () => undefined);
  if (shell.stdin instanceof Socket) shell.stdin.unref();
  return shell.stdin;
}
