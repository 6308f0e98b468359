import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import path from 'node:path';
import { expect, it, onTestFinished } from 'vitest';
import { childProtocolVersion, type FromChild, type ToChild } from '../../../electron/contract/childMessages.ts';
import { appFolder, temporaryFolder } from './workbench.ts';

const entry = path.join(appFolder, 'electron/backend/child.ts');

function start(): ChildProcess {
  const child = fork(entry, [], { serialization: 'advanced', execArgv: [] });
  onTestFinished(() => void child.kill('SIGKILL'));
  return child;
}

const post = (child: ChildProcess, message: ToChild) => void child.send(message);

/** The next message that meets a condition. */
function heard(child: ChildProcess, meets: (message: FromChild) => boolean): Promise<FromChild> {
  return new Promise((resolve) => {
    const listen = (message: unknown) => {
      if (!meets(message as FromChild)) return;
      child.off('message', listen);
      resolve(message as FromChild);
    };
    child.on('message', listen);
  });
}

async function opened(libraryFolder: string): Promise<ChildProcess> {
  const child = start();
  const ready = heard(child, (message) => message.kind === 'ready');
  post(child, { kind: 'open', settings: { libraryFolder, appFolder } });
  expect(await ready).toEqual({ kind: 'ready', version: childProtocolVersion });
  return child;
}

it('opens, answers, tells events, and closes when asked', async () => {
  const folder = temporaryFolder();
  const child = await opened(folder);
  const event = heard(child, (message) => message.kind === 'event');
  const reply = heard(child, (message) => message.kind === 'reply' && message.id === 2);
  post(child, { kind: 'ask', id: 1, name: 'library.state', params: {} });
  post(child, { kind: 'ask', id: 2, name: 'library.create', params: { contents: 'empty', voice: 'coach' } });
  expect(await event).toEqual({ kind: 'event', event: { name: 'libraryChanged', data: {} } });
  expect(await reply).toEqual({ kind: 'reply', id: 2, reply: { ok: true, value: { jobId: null } } });
  const closed = heard(child, (message) => message.kind === 'closed');
  post(child, { kind: 'close' });
  const [code] = await once(child, 'exit');
  expect([(await closed).kind, code]).toEqual(['closed', 0]);
});

it('answers bad questions and overhears messages that mean nothing', async () => {
  const child = await opened(temporaryFolder());
  child.send({ kind: 'dance' });
  const reply = heard(child, (message) => message.kind === 'reply');
  post(child, { kind: 'ask', id: 7, name: '__proto__', params: { __proto__: null } });
  expect(await reply).toMatchObject({ id: 7, reply: { ok: false, problem: { code: 'bad-request' } } });
});

it('goes when its host goes', async () => {
  const child = await opened(temporaryFolder());
  child.disconnect();
  const [code] = await once(child, 'exit');
  expect(code).toBe(0);
});

it('says what it is when a person starts it by hand', async () => {
  const { execFile } = await import('node:child_process');
  const child = execFile(process.execPath, [entry]);
  let said = '';
  child.stderr?.on('data', (chunk) => {
    said += chunk;
  });
  const [code] = await once(child, 'close');
  expect(code).toBe(2);
  expect(said).toMatch(/started by the window/);
});
