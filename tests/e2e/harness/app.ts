import { type ChildProcess, spawn } from 'node:child_process';
import { mkdir, writeFile } from 'node:fs/promises';
import { type Browser, chromium, type Page } from 'playwright-core';
import type { Reply } from '../../../electron/contract/reply.ts';
import type { Params, RequestName, Result } from '../../../electron/contract/requests.ts';
import { appCommand, chosenPathsFile, type LaunchOptions } from './command.ts';
import { commandLine, endNow, isAlive, processTree } from './processes.ts';
import { until } from './until.ts';

/** The running app, as a person and as an observer see it. */
export type App = {
  readonly page: Page;
  readonly processId: number;
  readonly debuggingPort: number;
  /** Every address that the page asked for. */
  readonly addresses: readonly string[];
  /** Asks the backend through the page's own bridge. */
  readonly reply: <N extends RequestName>(name: N, params: Params<N>) => Promise<Reply<Result<N>>>;
  /** As `reply`, and fails when the answer is a problem. */
  readonly ask: <N extends RequestName>(name: N, params: Params<N>) => Promise<Result<N>>;
  readonly backendProcessId: () => Promise<number>;
  /** Decides what the next native dialogs would answer. */
  readonly choose: (paths: {
    readonly save?: string | null;
    readonly open?: readonly string[];
    readonly folder?: string | null;
  }) => Promise<void>;
  /** Closes the window as a person does and waits for the end; gives the exit code. */
  readonly close: () => Promise<number | null>;
  /** Ends every process of the app at once, without a chance to save anything. */
  readonly kill: () => Promise<void>;
};

/** `mayStart`: false once the run is at its end. */
type StartOptions = LaunchOptions & {
  readonly mayStart: () => boolean;
  readonly measuring?: 'byItself' | 'onDemand';
  /** Starts the app in another way than the built one is started. */
  readonly start?: () => Promise<Started>;
};

/** Runs in the page: a library, this one or the next that is made, measures nothing by itself from now on. */
async function measureOnDemandAlone(): Promise<void> {
  const { rackside } = window;
  const change = () => rackside.ask('settings.change', { measureByItself: false });
  rackside.onEvent(({ name }) => {
    if (name === 'libraryChanged') void change();
  });
  const state = await rackside.ask('library.state', {});
  if (state.ok && state.value.kind === 'open') await change();
}

/** An app that has begun to run: its process, its end, the address to drive it by. */
export type Started = {
  readonly child: ChildProcess;
  readonly ended: Promise<number | null>;
  readonly endpoint: string;
};

async function startApp(options: StartOptions): Promise<Started> {
  if (!options.mayStart()) throw new Error('The run is at its end.');
  if (options.start !== undefined) return options.start();
  const { args, env } = appCommand(options);
  const child = spawn(options.executable, ['--remote-debugging-port=0', ...args], {
    env,
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  const ended = new Promise<number | null>((resolve) => {
    child.once('exit', resolve);
  });
  return { child, ended, endpoint: await debuggingEndpoint(child) };
}

const mostStarts = 3;

/** The driver now and then attaches to a page that never answers it; such a start is ended and made again. */
async function startAndConnect(options: StartOptions): Promise<Started & { browser: Browser }> {
  for (let start = 1; ; start += 1) {
    const started = await startApp(options);
    try {
      return { ...started, browser: await connect(started.endpoint) };
    } catch (error) {
      for (const id of [...(await processTree(started.child.pid ?? 0))].reverse()) endNow(id);
      await started.ended;
      if (start === mostStarts) throw error;
    }
  }
}

/** Starts the built app on a folder of its own and waits until its page is there. */
export async function launchApp(options: StartOptions): Promise<App> {
  await mkdir(options.folder, { recursive: true });
  const { child, ended, endpoint, browser } = await startAndConnect(options);
  const page = await until('the page of the app', () => {
    const pages = browser.contexts().flatMap((context) => context.pages());
    return pages.find((candidate) => candidate.url().startsWith('app:')) ?? null;
  });
  page.setDefaultTimeout(15_000);
  const addresses: string[] = [];
  page.on('request', (request) => addresses.push(request.url()));
  await page.waitForFunction(() => document.readyState === 'complete' && typeof window.rackside === 'object');
  if (options.measuring !== 'byItself') await page.evaluate(measureOnDemandAlone);

  const processId = child.pid ?? 0;
  const reply: App['reply'] = (name, params) =>
    page.evaluate(
      // Playwright carries plain data only, so the generic types are put back by the caller's signature.
      ([requestName, requestParams]) => window.rackside.ask(requestName as never, requestParams as never),
      [name, params] as const,
    ) as ReturnType<App['reply']> as never;

  return {
    page,
    processId,
    debuggingPort: Number(new URL(endpoint).port),
    addresses,
    reply,
    ask: async (name, params) => {
      const answer = await reply(name, params);
      if (!answer.ok) throw new Error(`${name}: ${JSON.stringify(answer.problem)}`);
      return answer.value;
    },
    backendProcessId: () => until('the backend process', () => backendOf(processId)),
    choose: (paths) => writeFile(chosenPathsFile(options.folder), JSON.stringify(paths)),
    close: async () => {
      await page.close({ runBeforeUnload: true }).catch(() => {});
      const code = await ended;
      await browser.close().catch(() => {});
      return code;
    },
    kill: async () => {
      const tree = await processTree(processId);
      for (const id of [...tree].reverse()) endNow(id);
      await ended;
      await until('every process to be gone', async () => !(await Promise.all(tree.map(isAlive))).includes(true));
      await browser.close().catch(() => {});
    },
  };
}

/** Connects once the page is there: a driver that arrives before the page has loaded waits in vain. */
async function connect(endpoint: string): Promise<Browser> {
  const { port } = new URL(endpoint);
  await until('the page to be listed', async () => {
    const targets: unknown = await fetch(`http://127.0.0.1:${port}/json/list`).then(
      (answer) => answer.json(),
      () => [],
    );
    return /"title":"[^"]*Rackside"/.test(JSON.stringify(targets));
  });
  return chromium.connectOverCDP(endpoint, { timeout: 10_000 });
}

async function backendOf(root: number): Promise<number | null> {
  for (const id of await processTree(root)) {
    const line = await commandLine(id);
    if (line.includes('backend.mjs') || line.includes('node.mojom.NodeService')) return id;
  }
  return null;
}

/** The address that a starting app says it can be driven by. */
export function debuggingEndpoint(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let words = '';
    child.stderr?.on('data', (chunk: Buffer) => {
      words = (words + chunk.toString()).slice(-20_000);
      const found = /DevTools listening on (ws:\/\/\S+)/.exec(words)?.[1];
      if (found !== undefined) resolve(found);
    });
    child.once('error', reject);
    child.once('exit', (code) => reject(new Error(`The app ended at once with ${code}: ${words.slice(-2000)}`)));
  });
}
