import * as v from 'valibot';
import type { Backend } from '../contract/backend.ts';
import { childProtocolVersion, type FromChild, type ToChild, toChildSchema } from '../contract/childMessages.ts';
import type { RequestName } from '../contract/requests.ts';
import { openBackend } from './backend.ts';

/** The line to the host, whichever way this process was started. */
type Line = {
  readonly post: (message: FromChild) => void;
  /** Posts and resolves when the message is out. */
  readonly postLast: (message: FromChild) => Promise<void>;
};

let backend: Backend | undefined;

/** The port that the window's runtime gives a utility process; undefined under a plain fork. */
type ParentPort = {
  readonly postMessage: (message: unknown) => void;
  readonly on: (event: 'message', listener: (event: { readonly data: unknown }) => void) => void;
};

function connect(): Line {
  const { parentPort } = process as { readonly parentPort?: ParentPort };
  if (parentPort) {
    const post = (message: FromChild) => parentPort.postMessage(message);
    // This port does not tell when a message is out.
    const postLast = async (message: FromChild) => {
      post(message);
      await new Promise((resolve) => setTimeout(resolve, 50));
    };
    const line: Line = { post, postLast };
    parentPort.on('message', ({ data }) => void receive(line, data));
    return line;
  }
  if (!process.send) {
    process.stderr.write('This is the backend of Rackside; it is started by the window, with "npm start".\n');
    process.exit(2);
  }
  const send = (message: FromChild, out: () => void) => {
    if (process.connected) process.send?.(message, undefined, undefined, out);
    else out();
  };
  const line: Line = {
    post: (message) => send(message, () => undefined),
    postLast: (message) => new Promise((resolve) => send(message, resolve)),
  };
  process.on('message', (message) => void receive(line, message));
  // The host is gone: nothing can be asked any more, and what was acknowledged is on the disk.
  process.on('disconnect', () => void leave());
  return line;
}

async function receive(line: Line, raw: unknown): Promise<void> {
  const parsed = v.safeParse(toChildSchema, raw);
  if (!parsed.success) {
    process.stderr.write('The backend got a message that it does not know.\n');
    return;
  }
  await obey(line, parsed.output);
}

async function obey(line: Line, message: ToChild): Promise<void> {
  switch (message.kind) {
    case 'open':
      if (backend) return;
      backend = openBackend({ ...message.settings, host: 'window' });
      backend.onEvent((event) => line.post({ kind: 'event', event }));
      line.post({ kind: 'ready', version: childProtocolVersion });
      return;
    case 'ask': {
      const reply = backend
        ? await backend.ask(message.name as RequestName, message.params as never)
        : ({ ok: false, problem: { code: 'backend-gone', message: { id: 'notOpenedYet', values: {} } } } as const);
      line.post({ kind: 'reply', id: message.id, reply });
      return;
    }
    case 'close':
      await backend?.close();
      await line.postLast({ kind: 'closed' });
      await leave();
      return;
  }
}

async function leave(): Promise<void> {
  await backend?.close();
  process.exit(0);
}

process.on('unhandledRejection', (error) => {
  process.stderr.write(`The backend stops because of an error: ${error instanceof Error ? error.stack : error}\n`);
  process.exit(1);
});
connect();
