import { spawn } from 'node:child_process';
import { access, mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import * as v from 'valibot';
import { type BidiSession, openBidi } from './bidi.ts';
import { endBrowser, orEnd } from './endBrowser.ts';
import { saidEndpoint } from './endpoint.ts';
import { clickAt, keyStrokes, middleOf } from './inputActions.ts';
import { complaintsSource, notedInPage, type PageInBrowser } from './pageInBrowser.ts';

const executable = '/usr/bin/firefox-esr';

/** A quiet browser for a person who wants a dark page and little motion; every way out of the machine leads nowhere. */
const preferences = {
  'layout.css.prefers-color-scheme.content-override': 0,
  'ui.prefersReducedMotion': 1,
  'network.proxy.type': 1,
  'network.proxy.socks': '127.0.0.1',
  'network.proxy.socks_port': 9,
  'browser.shell.checkDefaultBrowser': false,
  'datareporting.policy.dataSubmissionEnabled': false,
  'app.normandy.enabled': false,
  'browser.startup.page': 0,
  'media.gmp-manager.updateEnabled': false,
};

const contextSchema = v.object({ context: v.string() });
const evaluatedSchema = v.object({
  type: v.string(),
  result: v.optional(v.object({ value: v.optional(v.string()) })),
  exceptionDetails: v.optional(v.object({ text: v.string() })),
});
const requestSchema = v.object({ request: v.object({ url: v.string() }) });
const logSchema = v.object({ level: v.string(), text: v.nullable(v.string()) });
const shotSchema = v.object({ data: v.string() });

/** Starts Debian's Firefox without a window on a folder of its own, which becomes its profile. Throws when there is none. */
export async function openFirefox(folder: string): Promise<PageInBrowser> {
  await access(executable).catch(() => {
    throw new Error('Firefox is not installed (Debian: firefox-esr).');
  });
  await mkdir(folder, { recursive: true });
  const lines = Object.entries(preferences).map(([name, value]) => `user_pref("${name}", ${JSON.stringify(value)});`);
  await writeFile(path.join(folder, 'user.js'), lines.join('\n'));
  const child = spawn(
    executable,
    ['--headless', '--no-remote', '--remote-debugging-port=0', '--profile', folder, 'about:blank'],
    {
      env: { ...process.env, HOME: folder, MOZ_HEADLESS_WIDTH: '1300', MOZ_HEADLESS_HEIGHT: '900' },
      stdio: ['ignore', 'ignore', 'pipe'],
    },
  );
  const { session, context } = await orEnd(child, async () => {
    const opened = await openBidi(await saidEndpoint(child, 'WebDriver BiDi listening on'));
    await opened.send('session.subscribe', { events: ['log.entryAdded', 'network.beforeRequestSent'] });
    await opened.send('script.addPreloadScript', { functionDeclaration: `() => {${complaintsSource}}` });
    return { session: opened, ...v.parse(contextSchema, await opened.send('browsingContext.create', { type: 'tab' })) };
  });
  const page = actions(session, context);
  return {
    browser: 'Firefox',
    ...page,
    complaints: async () => [...logged(session), ...(await page.evaluate(notedInPage, null)).complaints],
    addresses: async () => [...asked(session), ...(await page.evaluate(notedInPage, null)).addresses],
    close: async () => {
      session.end();
      await endBrowser(child);
    },
  };
}

const logged = ({ events }: BidiSession): string[] =>
  events
    .filter(({ method }) => method === 'log.entryAdded')
    .map(({ params }) => v.parse(logSchema, params))
    .flatMap(({ level, text }) => (level === 'error' || level === 'warn' ? [text ?? ''] : []));

const asked = ({ events }: BidiSession): string[] =>
  events
    .filter(({ method }) => method === 'network.beforeRequestSent')
    .map(({ params }) => v.parse(requestSchema, params).request.url);

function actions(
  session: BidiSession,
  context: string,
): Omit<PageInBrowser, 'browser' | 'complaints' | 'addresses' | 'close'> {
  const run = async (expression: string): Promise<string> => {
    const how = { expression, target: { context }, awaitPromise: true, userActivation: false };
    const { type, result, exceptionDetails } = v.parse(evaluatedSchema, await session.send('script.evaluate', how));
    if (type !== 'success') throw new Error(`In the page: ${exceptionDetails?.text}`);
    return result?.value ?? 'null';
  };
  const evaluate: PageInBrowser['evaluate'] = async (act, given) =>
    JSON.parse(await run(`(async () => JSON.stringify((await (${act})(${JSON.stringify(given)})) ?? null))()`));
  const act = (source: object) => session.send('input.performActions', { context, actions: [source] });
  return {
    evaluate,
    open: async (url) => {
      await session.send('browsingContext.navigate', { context, url, wait: 'complete' });
      await session.send('browsingContext.activate', { context });
    },
    runSource: async (source) => {
      await run(`${source};'done'`);
    },
    click: async (selector, place = 0) => {
      const { x, y } = await evaluate(middleOf, { selector, place });
      await act({ type: 'pointer', id: 'mouse', actions: clickAt(x, y) });
    },
    press: async (key) => {
      await act({ type: 'key', id: 'keys', actions: keyStrokes(key) });
    },
    picture: async (file) => {
      const { data } = v.parse(shotSchema, await session.send('browsingContext.captureScreenshot', { context }));
      await writeFile(file, Buffer.from(data, 'base64'));
    },
  };
}
