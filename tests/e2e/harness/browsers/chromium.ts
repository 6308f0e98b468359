import { spawn } from 'node:child_process';
import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { type CDPSession, chromium, type Page } from 'playwright-core';
import { runtimeArguments, runtimeEnvironment, thisMachine } from '../../../../electron/launch/machine.ts';
import type { LaunchOptions } from '../command.ts';
import { endNow, processTree } from '../processes.ts';
import { until } from '../until.ts';
import { saidEndpoint } from './endpoint.ts';
import { complaintsSource, notedInPage, type PageInBrowser } from './pageInBrowser.ts';

/** A page in the runtime that shows the desk, in a window without the desk. */
export type ChromiumPage = PageInBrowser & {
  readonly resize: (width: number, height: number) => Promise<void>;
  readonly prefer: (how: {
    readonly colorScheme?: 'light' | 'dark';
    readonly reducedMotion?: 'reduce' | 'no-preference';
  }) => Promise<void>;
  readonly scripts: (are: 'on' | 'off') => Promise<void>;
};

const plainWindow = path.join(import.meta.dirname, '..', 'plainWindow');

/** Starts the runtime on a folder of its own, which becomes its profile. */
export async function openChromium({ executable, environment, folder }: LaunchOptions): Promise<ChromiumPage> {
  await mkdir(folder, { recursive: true });
  const machine = thisMachine();
  const args = ['--remote-debugging-port=0', ...runtimeArguments(machine), `--user-data-dir=${folder}`, plainWindow];
  const child = spawn(executable, ['--force-device-scale-factor=1', ...args], {
    // Its warnings are for those who write the window, not the page.
    env: { ...runtimeEnvironment(machine), ...environment, ELECTRON_DISABLE_SECURITY_WARNINGS: '1' },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const endpoint = await saidEndpoint(child, 'DevTools listening on');
  await until('the empty window', async () => {
    const targets = await fetch(`http://127.0.0.1:${new URL(endpoint).port}/json/list`);
    return (await targets.text()).includes('about:blank');
  });
  const driver = await chromium.connectOverCDP(endpoint, { timeout: 10_000 });
  const page = await until('the page', () => driver.contexts().flatMap((context) => context.pages())[0] ?? null);
  page.setDefaultTimeout(15_000);
  const seen = await watch(page);
  const session = await page.context().newCDPSession(page);
  return {
    browser: 'Chromium',
    ...actions(page, session),
    complaints: async () => [...seen.complaints, ...(await page.evaluate(notedInPage)).complaints],
    addresses: async () => [...seen.addresses, ...(await page.evaluate(notedInPage)).addresses],
    close: async () => {
      const tree = await processTree(child.pid ?? 0);
      await driver.close().catch(() => {});
      for (const id of [...tree].reverse()) endNow(id);
    },
  };
}

async function watch(page: Page) {
  const complaints: string[] = [];
  const addresses: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => addresses.push(request.url()));
  await page.addInitScript(complaintsSource);
  return { complaints, addresses };
}

function actions(
  page: Page,
  session: CDPSession,
): Omit<ChromiumPage, 'browser' | 'complaints' | 'addresses' | 'close'> {
  return {
    open: async (address) => {
      await page.goto(address);
    },
    evaluate: async (act, given) => {
      const answer: string = await page.evaluate(
        `(async () => JSON.stringify((await (${act})(${JSON.stringify(given)})) ?? null))()`,
      );
      return JSON.parse(answer);
    },
    runSource: async (source) => {
      await page.evaluate(`${source};undefined`);
    },
    click: (selector, place = 0) => page.locator(selector).nth(place).click(),
    press: (key) => page.keyboard.press(key),
    picture: async (file) => {
      await page.screenshot({ path: file, animations: 'disabled' });
    },
    resize: (width, height) => page.setViewportSize({ width, height }),
    prefer: (how) => page.emulateMedia(how),
    scripts: async (are) => {
      await session.send('Emulation.setScriptExecutionDisabled', { value: are === 'off' });
    },
  };
}
