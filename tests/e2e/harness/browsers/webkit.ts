import { spawn } from 'node:child_process';
import { access, mkdir, writeFile } from 'node:fs/promises';
import { createServer } from 'node:net';
import * as v from 'valibot';
import { until } from '../until.ts';
import { endBrowser, orEnd } from './endBrowser.ts';
import { clickAt, keyStrokes, middleOf } from './inputActions.ts';
import { complaintsSource, notedInPage, type PageInBrowser } from './pageInBrowser.ts';
import { openWebDriver, type WebDriverSession } from './webdriver.ts';

const executable = '/usr/bin/WebKitWebDriver';

/** Without the desktop's services: where they are installed they would hang a folder of theirs into this one. */
const byItself = { DBUS_SESSION_BUS_ADDRESS: 'disabled:', GTK_USE_PORTAL: '0' };

/** Starts Debian's WebKit in a window on a folder of its own. Throws when there is none. */
export async function openWebKit(folder: string, environment: NodeJS.ProcessEnv): Promise<PageInBrowser> {
  await access(executable).catch(() => {
    throw new Error('WebKit is not installed (Debian: webkit2gtk-driver).');
  });
  await mkdir(folder, { recursive: true });
  const port = await freePort();
  const home = { HOME: folder, XDG_RUNTIME_DIR: folder, XDG_CACHE_HOME: folder, XDG_DATA_HOME: folder };
  const child = spawn(executable, [`--port=${port}`], {
    env: { ...process.env, ...environment, ...home, ...byItself, WEBKIT_DISABLE_COMPOSITING_MODE: '1' },
    stdio: 'ignore',
  });
  const address = `http://127.0.0.1:${port}`;
  const session = await orEnd(child, async () => {
    await until('the driver of WebKit', async () => {
      const answer = await fetch(`${address}/status`).catch(() => null);
      return answer?.ok === true;
    });
    return openWebDriver(address);
  });
  const page = actions(session);
  return {
    browser: 'WebKit',
    ...page,
    complaints: async () => (await page.evaluate(notedInPage, null)).complaints,
    addresses: async () => (await page.evaluate(notedInPage, null)).addresses,
    close: async () => {
      await session.end();
      await endBrowser(child);
    },
  };
}

function actions(session: WebDriverSession): Omit<PageInBrowser, 'browser' | 'complaints' | 'addresses' | 'close'> {
  const evaluate: PageInBrowser['evaluate'] = async (act, given) => {
    // What a promise gives comes back through the last argument; what goes wrong comes back as words.
    const script = `(async () => JSON.stringify((await (${act})(${JSON.stringify(given)})) ?? null))()
      .then((result) => arguments[0](['given', result]), (error) => arguments[0](['wrong', String(error)]))`;
    const [how, words] = v.parse(
      v.tuple([v.string(), v.string()]),
      await session.post('/execute/async', { script, args: [] }),
    );
    if (how !== 'given') throw new Error(`In the page: ${words}`);
    return JSON.parse(words);
  };
  const runSource = async (source: string) => {
    await session.post('/execute/sync', { script: source, args: [] });
  };
  const act = (source: object) => session.post('/actions', { actions: [source] });
  return {
    evaluate,
    runSource,
    open: async (url) => {
      await session.post('/url', { url });
      // This protocol has no way in before the page's own scripts.
      await runSource(complaintsSource);
    },
    click: async (selector, place = 0) => {
      const { x, y } = await evaluate(middleOf, { selector, place });
      await act({ type: 'pointer', id: 'mouse', actions: clickAt(x, y) });
    },
    press: async (key) => {
      await act({ type: 'key', id: 'keys', actions: keyStrokes(key) });
    },
    picture: async (file) => {
      await writeFile(file, Buffer.from(v.parse(v.string(), await session.get('/screenshot')), 'base64'));
    },
  };
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const server = createServer();
    server.once('error', reject);
    server.listen(0, '127.0.0.1', () => {
      const address = server.address();
      server.close(() => resolve(typeof address === 'object' && address !== null ? address.port : 0));
    });
  });
}
