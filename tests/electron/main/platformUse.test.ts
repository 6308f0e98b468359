import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { expect, test } from 'vitest';

const root = path.resolve(import.meta.dirname, '..', '..', '..');

/** The product's own source files, with their text. */
async function sources(): Promise<readonly { readonly file: string; readonly text: string }[]> {
  const folders = ['electron', 'renderer', 'engine'];
  const files = await Promise.all(
    folders.map(async (folder) => {
      const entries = await readdir(path.join(root, folder), { recursive: true, withFileTypes: true });
      return entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
    }),
  );
  const code = files.flat().filter((file) => /\.(ts|tsx|mjs|html)$/.test(file));
  return Promise.all(
    code.map(async (file) => ({
      file: path.relative(root, file).replaceAll(path.sep, '/'),
      text: await readFile(file, 'utf8'),
    })),
  );
}

const using = async (pattern: RegExp) =>
  (await sources()).filter(({ text }) => pattern.test(text)).map(({ file }) => file);

test('messages between page and host are touched in one file on each side', async () => {
  expect(await using(/\bipcMain\b/)).toEqual(['electron/main/bridge/serveBridge.ts']);
  expect(await using(/\bipcRenderer\b/)).toEqual(['electron/preload/preload.ts']);
});

test('only the window side imports the platform', async () => {
  const importing = await using(/from 'electron'/);
  expect(importing.filter((file) => !/^electron\/(main|preload)\//.test(file))).toEqual([]);
});

test('windows are made in one place, with the one set of preferences', async () => {
  expect(await using(/new (BrowserWindow|BrowserView|WebContentsView|BaseWindow)\b/)).toEqual([
    'electron/main/window/openWindow.ts',
  ]);
});

test('nothing opens other programs, updates itself or reports home', async () => {
  expect(await using(/openExternal\(|autoUpdater|crashReporter/)).toEqual([]);
});

test('no address of a server is in the product, but where the runtime is fetched', async () => {
  const addressed = (await sources()).filter(({ text }) =>
    /https?:\/\//.test(text.replaceAll(/\b(xmlns[:\w]*=|www\.w3\.org)\S*/g, '')),
  );
  // Tools of the build, which name addresses in what they write and ask for none.
  const build = ['electron/notices/sbom.ts', 'electron/notices/thirdParty.ts'];
  const allowed = ['electron/launch/runtime.ts', ...build];
  const codeOnly = addressed.filter(({ text }) =>
    text
      .split('\n')
      .some((line) => /https?:\/\//.test(line) && !/^\s*(\/\/|\*|\/\*)/.test(line) && !line.includes('www.w3.org')),
  );
  expect(codeOnly.map(({ file }) => file).filter((file) => !allowed.includes(file))).toEqual([]);
});

test("Electron's package is of a line that still gets fixes", async () => {
  // Common practice: the latest three major versions get fixes; 43 was the oldest of them when this was written.
  const facts: { version: string } = JSON.parse(
    await readFile(path.join(root, 'node_modules', 'electron', 'package.json'), 'utf8'),
  );
  expect(Number(facts.version.split('.')[0])).toBeGreaterThanOrEqual(43);
});
