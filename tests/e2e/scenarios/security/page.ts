import assert from 'node:assert/strict';
import type { App } from '../../harness/app.ts';
import { commandLine, hasCallFilter, processTree } from '../../harness/processes.ts';
import type { Report } from '../../harness/report.ts';

/** What the page is and what it finds around itself. */
export async function checkPage(app: App, { check }: Report): Promise<void> {
  const { page } = app;

  await check('the page comes from the app itself, not from a file or a server', async () => {
    assert.equal(await page.evaluate(() => location.protocol), 'app:');
    assert.equal(await page.evaluate(() => window.origin), 'app://local');
    assert.equal(await page.evaluate(() => window.isSecureContext), true);
  });

  await check('the page has no Node', async () => {
    const found = await page.evaluate(() =>
      ['require', 'process', 'module', 'exports', 'Buffer', 'global', '__dirname'].filter((name) => name in window),
    );
    assert.deepEqual(found, []);
  });

  await check('the page has the four functions of the bridge and nothing else', async () => {
    const keys = await page.evaluate(() => Object.keys(window.rackside).sort());
    assert.deepEqual(keys, ['ask', 'askWindow', 'onEvent', 'pathOfFile']);
  });

  await check('the page cannot change the bridge', async () => {
    const result = await page.evaluate(() => {
      const before = window.rackside.ask;
      const tries = [
        () => Object.assign(window.rackside, { ask: () => 'mine' }),
        () => Object.assign(window, { rackside: { ask: () => 'mine' } }),
        () => Object.defineProperty(window.rackside, 'ask', { value: () => 'mine' }),
        () => Object.defineProperty(window, 'rackside', { value: {} }),
        () => Reflect.deleteProperty(window, 'rackside'),
        () => Object.assign(window.rackside, { further: 1 }),
      ];
      for (const act of tries) {
        try {
          act();
        } catch {
          // Refused aloud: as good as silently.
        }
      }
      return { same: window.rackside.ask === before, keys: Object.keys(window.rackside).length };
    });
    assert.deepEqual(result, { same: true, keys: 4 });
  });

  await check('the page cannot embed a foreign page', async () => {
    const attached = await page.evaluate(() => {
      const view = document.createElement('webview');
      view.setAttribute('src', 'data:text/html,embedded');
      document.body.append(view);
      const embeds = 'getWebContentsId' in view || 'loadURL' in view;
      view.remove();
      return embeds;
    });
    assert.equal(attached, false);
  });

  // The root user has no sandbox, so that there is nothing to see of it.
  if (process.getuid?.() === 0) return;
  await check('every process that shows a page runs in the sandbox', async () => {
    const lines = await Promise.all(
      (await processTree(app.processId)).map(async (id) => ({ id, line: await commandLine(id) })),
    );
    const pages = lines.filter(({ line }) => line.includes('--type=renderer'));
    assert.ok(pages.length > 0);
    for (const { id, line } of pages) {
      assert.doesNotMatch(line, /--no-sandbox/);
      assert.equal(await hasCallFilter(id), true);
    }
  });
}
