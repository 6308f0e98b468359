import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import type { Report } from '../../harness/report.ts';
import { networkSockets } from '../../harness/sockets.ts';

/** Nothing leaves: the page can't reach anything, and no process of the app holds a connection. */
export async function checkNetwork(app: App, { check }: Report): Promise<void> {
  await check('the page reaches neither files nor servers', async () => {
    const reached = await app.page.evaluate(async () => {
      const addresses = [
        'https://elsewhere.example/',
        'http://127.0.0.1:9/',
        'file:///etc/hosts',
        'app://other/index.html',
      ];
      const answers = addresses.map((address) =>
        fetch(address, { mode: 'no-cors' }).then(
          () => address,
          () => '',
        ),
      );
      return (await Promise.all(answers)).filter((address) => address !== '');
    });
    assert.deepEqual(reached, []);
    const socket = await app.page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          try {
            const line = new WebSocket('ws://127.0.0.1:9/');
            line.addEventListener('open', () => resolve('open'));
            line.addEventListener('error', () => resolve('refused'));
          } catch {
            resolve('refused');
          }
        }),
    );
    assert.equal(socket, 'refused');
  });

  await check('the page asked for nothing but its own addresses', async () => {
    const foreign = app.addresses.filter((address) => !/^(app:\/\/local\/|blob:app:|data:)/.test(address));
    // The run's own attempts of the checks before are what is left.
    assert.deepEqual(
      foreign.filter(
        (address) => !/elsewhere\.example|127\.0\.0\.1:9|\/etc\/hosts|app:\/\/other|^about:/.test(address),
      ),
      [],
    );
  });

  await check('no process of the app holds a network connection', async () => {
    assert.deepEqual(await networkSockets(app.processId, app.debuggingPort), []);
  });
}
