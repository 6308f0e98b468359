import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import { listen } from '../../harness/listener.ts';
import type { Report } from '../../harness/report.ts';
import { networkSockets } from '../../harness/sockets.ts';

/**
 * Runs in the page and in a fresh frame of it: asks a listener for its own address as calls from browser to browser do, and
 * has the browser connect ahead. Gives the addresses that the browser is ready to be called on.
 */
async function tryOwnLines(address: string): Promise<string[]> {
  const candidates: string[] = [];
  const call = async (place: typeof globalThis): Promise<void> => {
    const login = { username: 'a', credential: 'b' };
    const line = new place.RTCPeerConnection({
      iceServers: [
        { urls: `stun:${address}` },
        { urls: `turn:${address}`, ...login },
        { urls: `turn:${address}?transport=tcp`, ...login },
      ],
    });
    line.createDataChannel('tried');
    const done = new Promise<void>((resolve) => {
      line.addEventListener('icecandidate', ({ candidate }) => {
        if (candidate === null) resolve();
        else candidates.push(candidate.candidate);
      });
      setTimeout(resolve, 3000);
    });
    await line.setLocalDescription(await line.createOffer());
    await done;
    line.close();
  };
  const frame = document.createElement('iframe');
  document.body.append(frame);
  const inside = frame.contentWindow as (Window & typeof globalThis) | null;
  const ahead = ['preconnect', 'prefetch', 'modulepreload'].map((rel) =>
    Object.assign(document.createElement('link'), { rel, href: `http://${address}/` }),
  );
  document.head.append(...ahead);
  await Promise.all([call(window), ...(inside === null ? [] : [call(inside)])]);
  for (const element of [frame, ...ahead]) element.remove();
  return candidates.filter((candidate) => candidate !== '');
}

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

  await check('the page reaches no listener by its own lines either, nor does a frame inside it', async () => {
    const listener = await listen();
    try {
      const found = await app.page.evaluate(tryOwnLines, listener.address);
      assert.deepEqual(found, []);
      assert.deepEqual(listener.heard, []);
    } finally {
      await listener.close();
    }
  });

  await check('the page asked for nothing but its own addresses', async () => {
    const foreign = app.addresses.filter((address) => !/^(app:\/\/local\/|blob:app:|data:)/.test(address));
    // The run's own attempts of the checks before are what is left.
    assert.deepEqual(
      foreign.filter(
        (address) => !/elsewhere\.example|127\.0\.0\.1:\d+|\/etc\/hosts|app:\/\/other|^about:/.test(address),
      ),
      [],
    );
  });

  await check('no process of the app holds a network connection', async () => {
    assert.deepEqual(await networkSockets(app.processId, app.debuggingPort), []);
  });
}
