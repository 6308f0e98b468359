import { expect, test, vi } from 'vitest';
import { endingOf } from '../../../../electron/main/window/ending.ts';

/**
 * A platform as Electron is: a quit that comes within the turn of the event which prevented the quit before is lost.
 */
function program(close: () => Promise<void>) {
  let inTurn = false;
  const did: string[] = [];
  const timers: { readonly delayMs: number; readonly run: () => void }[] = [];
  const ending = endingOf({
    close,
    quit: () => void (inTurn ? did.push('quit, not heard') : willQuit()),
    exit: () => void did.push('exit'),
    startAgain: () => void did.push('start again'),
    after: (delayMs, run) => void timers.push({ delayMs, run }),
  });
  const willQuit = (): void => {
    did.push(ending.mustWait() ? 'waits' : 'ends');
  };
  return {
    did,
    ending,
    /** The turn of the platform's event goes on over everything that was promised already. */
    quit: async () => {
      inTurn = true;
      willQuit();
      for (let step = 0; step < 10; step += 1) await Promise.resolve();
      inTurn = false;
    },
    pass: (untilMs: number) => {
      for (const { run } of timers.splice(0).filter(({ delayMs }) => delayMs <= untilMs)) run();
    },
  };
}

test('a program whose library is closed at once ends all the same', async () => {
  const { quit, pass, did } = program(async () => {});
  await quit();
  pass(0);
  expect(did).toEqual(['waits', 'ends']);
});

test('it waits for the library, closes it once, and ends also where closing it failed', async () => {
  const close = vi.fn(() => Promise.reject(new Error('the disk is gone')));
  const { quit, pass, did } = program(close);
  await quit();
  await quit();
  pass(0);
  expect(close).toHaveBeenCalledOnce();
  expect(did.at(-1)).toBe('ends');
});

test('a quit that nobody heard is followed by an end within seconds', async () => {
  const { quit, pass, did } = program(async () => {});
  await quit();
  pass(5000);
  expect(did).toContain('exit');
});

test('a start that comes while the program closes gets its window once it has ended', async () => {
  let closed = (): void => {};
  const { quit, pass, did, ending } = program(
    () =>
      new Promise((resolve) => {
        closed = resolve;
      }),
  );
  await quit();
  ending.wantedAgain();
  ending.wantedAgain();
  expect(did).toEqual(['waits']);
  closed();
  await Promise.resolve();
  await Promise.resolve();
  pass(0);
  expect(did).toEqual(['waits', 'start again', 'ends']);
});

test('so does one that comes after it has closed', async () => {
  const { quit, did, ending } = program(async () => {});
  await quit();
  ending.wantedAgain();
  ending.wantedAgain();
  expect(did).toEqual(['waits', 'start again']);
});
