import type { App } from './app.ts';

/** What the preview's frame shows: it is closed off, so its address is read once more from the page. */
export async function previewed(app: App, title: string): Promise<string> {
  const frame = app.page.locator(`iframe[title="${title}"]`);
  await frame.waitFor();
  const address = (await frame.getAttribute('src')) ?? '';
  return app.page.evaluate(async (from) => (await fetch(from)).text(), address);
}
