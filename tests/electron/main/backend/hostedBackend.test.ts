import { expect, test } from 'vitest';
import { childProtocolVersion, type ToChild } from '../../../../electron/contract/childMessages.ts';
import type { BackendProcess } from '../../../../electron/main/backend/backendProcess.ts';
import { hostBackend, restartDelaysMs } from '../../../../electron/main/backend/hostedBackend.ts';

type FakeProcess = {
  readonly sent: ToChild[];
  readonly say: (message: unknown) => void;
  readonly exit: () => void;
  killed: boolean;
  kill: () => void;
};

/** A host over processes, time and clock of the test's own. */
function host() {
  const started: FakeProcess[] = [];
  const timers: { delayMs: number; act: () => void; stopped: boolean }[] = [];
  const clock = { nowMs: 0 };
  const logged: string[] = [];
  const write = (what: string) => void logged.push(what);
  const start = (): BackendProcess => {
    const messageListeners: ((message: unknown) => void)[] = [];
    const exitListeners: (() => void)[] = [];
    const fake: FakeProcess = {
      sent: [],
      say: (message) => messageListeners.forEach((listener) => void listener(message)),
      exit: () => exitListeners.splice(0).forEach((listener) => void listener()),
      killed: false,
      kill: () => {
        fake.killed = true;
        fake.exit();
      },
    };
    started.push(fake);
    return {
      post: (message) => void fake.sent.push(message),
      onMessage: (listener) => void messageListeners.push(listener),
      onExit: (listener) => void exitListeners.push(listener),
      kill: () => fake.kill(),
    };
  };
  const backend = hostBackend({
    start,
    settings: { libraryFolder: '/library', appFolder: '/app' },
    log: { info: write, warn: write, error: write },
    after: (delayMs, act) => {
      const timer = { delayMs, act, stopped: false };
      timers.push(timer);
      return () => {
        timer.stopped = true;
      };
    },
    nowMs: () => clock.nowMs,
  });
  const last = (): FakeProcess => {
    const found = started.at(-1);
    if (found === undefined) throw new Error('no process was started');
    return found;
  };
  return { backend, started, timers, clock, logged, last };
}

const ready = { kind: 'ready', version: childProtocolVersion };
const asks = (process: FakeProcess) => process.sent.filter((message) => message.kind === 'ask');
const gone = {
  ok: false,
  problem: { code: 'backend-gone', message: { id: expect.any(String), values: expect.anything() } },
};

test('the process is told where the library is', () => {
  const { last } = host();
  expect(last().sent).toEqual([{ kind: 'open', settings: { libraryFolder: '/library', appFolder: '/app' } }]);
});

test('questions wait until the backend is ready, and each gets its own answer', async () => {
  const { backend, last } = host();
  const first = backend.ask('library.state', {});
  const second = backend.ask('jobs.list', {});
  expect(asks(last())).toEqual([]);
  last().say(ready);
  const [one, two] = asks(last());
  expect(one).toMatchObject({ name: 'library.state', params: {} });
  last().say({ kind: 'reply', id: two?.id, reply: { ok: true, value: [] } });
  last().say({ kind: 'reply', id: one?.id, reply: { ok: true, value: { kind: 'none' } } });
  expect(await first).toEqual({ ok: true, value: { kind: 'none' } });
  expect(await second).toEqual({ ok: true, value: [] });
});

test('when the backend dies, open questions are answered at once and later ones by the next backend', async () => {
  const { backend, last, timers, started } = host();
  last().say(ready);
  const open = backend.ask('library.state', {});
  last().exit();
  expect(await open).toEqual(gone);
  const later = backend.ask('library.state', {});
  timers.at(-1)?.act();
  expect(started).toHaveLength(2);
  last().say(ready);
  last().say({ kind: 'reply', id: asks(last())[0]?.id, reply: { ok: true, value: { kind: 'none' } } });
  expect(await later).toEqual({ ok: true, value: { kind: 'none' } });
});

test('the page hears of a restart, not of the first start', () => {
  const { backend, last, timers } = host();
  const heard: string[] = [];
  backend.onEvent((event) => heard.push(event.name));
  last().say(ready);
  expect(heard).toEqual([]);
  last().exit();
  timers.at(-1)?.act();
  last().say(ready);
  expect(heard).toEqual(['backendRestarted']);
});

test('it is started again five times, later each time, and then stays down', async () => {
  const { backend, last, timers, started } = host();
  for (let death = 0; death < 6; death += 1) {
    last().exit();
    if (death < 5) timers.at(-1)?.act();
  }
  expect(started).toHaveLength(6);
  const delays = timers.map(({ delayMs }) => delayMs);
  expect(delays).toHaveLength(restartDelaysMs.length);
  expect(delays).toEqual([...delays].sort((a, b) => a - b));
  expect(new Set(delays).size).toBe(5);
  expect(await backend.ask('library.state', {})).toEqual(gone);
});

test('the log tells of every restart, and of the end of them', () => {
  const { last, timers, logged } = host();
  for (let death = 0; death < 6; death += 1) {
    last().exit();
    if (death < 5) timers.at(-1)?.act();
  }
  expect(logged).toEqual([...Array(5).fill('backend stopped and is started again'), 'backend stopped and stays down']);
});

test('questions that waited for a backend which stays down are answered', async () => {
  const { backend, last, timers } = host();
  const waiting = backend.ask('library.state', {});
  for (let death = 0; death < 6; death += 1) {
    last().exit();
    if (death < 5) timers.at(-1)?.act();
  }
  expect(await waiting).toEqual(gone);
});

test('a backend that ran well for a while earns its restarts again', () => {
  const { last, timers, clock, started } = host();
  for (let death = 0; death < 12; death += 1) {
    last().say(ready);
    clock.nowMs += 10 * 60_000;
    last().exit();
    timers.at(-1)?.act();
  }
  expect(started).toHaveLength(13);
});

test('closing asks the backend, waits for it and starts nothing again', async () => {
  const { backend, last, started, timers } = host();
  last().say(ready);
  const open = backend.ask('jobs.list', {});
  const closed = backend.close();
  expect(last().sent.at(-1)).toEqual({ kind: 'close' });
  last().say({ kind: 'reply', id: asks(last())[0]?.id, reply: { ok: true, value: [] } });
  expect(await open).toEqual({ ok: true, value: [] });
  last().say({ kind: 'closed' });
  last().exit();
  await closed;
  expect(started).toHaveLength(1);
  expect(timers.every(({ stopped }) => stopped)).toBe(true);
  expect(await backend.ask('library.state', {})).toEqual(gone);
});

test('a backend that does not close is ended', async () => {
  const { backend, last, timers } = host();
  last().say(ready);
  const closed = backend.close();
  expect(timers.at(-1)?.delayMs).toBe(5000);
  timers.at(-1)?.act();
  await closed;
  expect(last().killed).toBe(true);
});

test('closing does not wait for a backend that not even being killed ends', async () => {
  const { backend, last, timers } = host();
  last().say(ready);
  last().kill = () => {};
  const closed = backend.close();
  timers.at(-1)?.act();
  timers.at(-1)?.act();
  await closed;
});

test('closing between two starts prevents the next', async () => {
  const { backend, last, timers } = host();
  last().exit();
  await backend.close();
  expect(timers.at(-1)?.stopped).toBe(true);
});

test('a backend of another version is not used', () => {
  const { last } = host();
  last().say({ kind: 'ready', version: childProtocolVersion + 1 });
  expect(last().killed).toBe(true);
});

test('what is not in the protocol is not passed on', async () => {
  const { backend, last } = host();
  const heard: unknown[] = [];
  backend.onEvent((event) => heard.push(event));
  last().say(ready);
  const answered = backend.ask('library.state', {});
  const id = asks(last())[0]?.id;
  for (const strange of [
    null,
    'ready',
    { kind: 'burn' },
    { kind: 'reply', id, reply: { ok: 'maybe' } },
    { kind: 'event', event: { name: 'jobChanged', data: {} } },
    { kind: 'event', event: { name: '__proto__', data: {} } },
  ]) {
    last().say(strange);
  }
  expect(heard).toEqual([]);
  last().say({ kind: 'event', event: { name: 'sessionChanged', data: { sessionId: 's1', summary: null } } });
  expect(heard).toEqual([{ name: 'sessionChanged', data: { sessionId: 's1', summary: null } }]);
  last().say({ kind: 'reply', id, reply: { ok: true, value: { kind: 'none' } } });
  expect(await answered).toEqual({ ok: true, value: { kind: 'none' } });
});
