import { mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readStaticFile } from '../../../../electron/main/page/staticFile.ts';

let home = '';
let page = '';
beforeAll(async () => {
  home = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  page = path.join(home, 'page');
  await mkdir(path.join(page, 'assets'), { recursive: true });
  await mkdir(path.join(home, 'page-secrets'));
  await writeFile(path.join(page, 'index.html'), 'index');
  await writeFile(path.join(page, 'assets', 'a b.js'), 'script');
  await writeFile(path.join(page, 'notes.txt'), 'no kind of file a page is made of');
  await writeFile(path.join(home, 'secret.js'), 'secret');
  await writeFile(path.join(home, 'page-secrets', 'secret.js'), 'secret');
  await symlink(path.join(home, 'secret.js'), path.join(page, 'link.js'));
  await symlink(home, path.join(page, 'up'));
});
afterAll(() => rm(home, { recursive: true }));

test('serves the files of the page with their types', async () => {
  expect(await readStaticFile(page, '/index.html')).toEqual({
    content: Buffer.from('index'),
    type: 'text/html; charset=utf-8',
  });
  expect((await readStaticFile(page, '/assets/a%20b.js'))?.content.toString()).toBe('script');
});

test.each([
  ['parent', '/../secret.js'],
  ['encoded slash', '/..%2fsecret.js'],
  ['encoded dots', '/%2e%2e/secret.js'],
  ['encoded dots and slash', '/%2e%2e%2fsecret.js'],
  ['parent from inside', '/assets/../../secret.js'],
  ['sibling with the same beginning', '/../page-secrets/secret.js'],
  ['backslash', '/..\\secret.js'],
  ['encoded backslash', '/..%5csecret.js'],
  ['drive', '/C:/secret.js'],
  ['share', '//server/secret.js'],
  ['NUL', '/index.html%00.js'],
  ['NUL before the end', '/../secret.js%00.html'],
  ['encoded twice', '/%252e%252e/secret.js'],
  ['broken encoding', '/%e0%a4%a.js'],
  ['link to a file outside', '/link.js'],
  ['link to a folder outside', '/up/secret.js'],
  ['folder', '/assets'],
  ['root', '/'],
  ['unknown', '/gone.js'],
  ['another kind of file', '/notes.txt'],
])('%s is not served: %s', async (_what, address) => {
  expect(await readStaticFile(page, address)).toBeNull();
});
