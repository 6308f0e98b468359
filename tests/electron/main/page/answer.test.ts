import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { Backend } from '../../../../electron/contract/backend.ts';
import { answer } from '../../../../electron/main/page/answer.ts';

let folder = '';
const asked: unknown[] = [];

const ask = (async (name: string, params: Record<string, string>) => {
  asked.push([name, params]);
  if (name === 'documents.preview' && params.sessionId === 's1') return { ok: true, value: { html: '<p>Dear</p>' } };
  if (name === 'media.resolve' && params.clipId === 'c1') {
    return { ok: true, value: { path: path.join(folder, `${params.what}.bin`), type: 'video/mp4' } };
  }
  return {
    ok: false,
    problem: { code: params.clipId === 'down' ? 'backend-gone' : 'not-found', message: { id: 'clipGone', values: {} } },
  };
}) as unknown as Backend['ask'];

const get = (address: string, init?: RequestInit) => answer(new Request(address, init), { folder, ask });

beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  await writeFile(path.join(folder, 'index.html'), '<p>page</p>');
  for (const what of ['clip', 'poster', 'filmstrip']) await writeFile(path.join(folder, `${what}.bin`), what);
});
afterAll(() => rm(folder, { recursive: true }));

test('the page carries the strict policy', async () => {
  const page = await get('app://local/index.html');
  expect(page.status).toBe(200);
  expect(await page.text()).toBe('<p>page</p>');
  expect(page.headers.get('content-security-policy')).toMatch(/^default-src 'none'; script-src 'self';/);
  expect(page.headers.get('x-content-type-options')).toBe('nosniff');
});

test.each([
  ['app://local/media/c1', 'clip'],
  ['app://local/pictures/c1/poster', 'poster'],
  ['app://local/pictures/c1/filmstrip', 'filmstrip'],
])('%s gives the %s', async (address, content) => {
  expect(await (await get(address)).text()).toBe(content);
});

test('a document is shown with no rights at all', async () => {
  const document = await get('app://local/preview/s1/letter?revision=4');
  expect(await document.text()).toBe('<p>Dear</p>');
  const policy = document.headers.get('content-security-policy')?.split('; ') ?? [];
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain('sandbox');
  expect(policy.join()).not.toMatch(/script-src|connect-src/);
});

test('a document is shown in the scheme that the address names, and in no other', async () => {
  for (const [query, scheme] of [
    ['scheme=dark', { scheme: 'dark' }],
    ['scheme=light', { scheme: 'light' }],
    ['scheme=%22%3E', {}],
    ['', {}],
  ] as const) {
    await get(`app://local/preview/s1/letter?revision=4&${query}`);
    expect(asked.at(-1)).toEqual(['documents.preview', { sessionId: 's1', document: 'letter', ...scheme }]);
  }
});

test.each([
  'app://local/media/unknown',
  'app://local/media/',
  'app://local/media/c1/further',
  'app://local/pictures/c1/clip',
  'app://local/preview/s2/letter',
  'app://local/preview/s1/diary',
  'app://elsewhere/index.html',
  'https://local/index.html',
])('%s is not found', async (address) => {
  expect((await get(address)).status).toBe(404);
});

test('a clip can not be had while the backend is away', async () => {
  expect((await get('app://local/media/down')).status).toBe(503);
});

test('an id reaches the backend as text, whatever is in it', async () => {
  await get('app://local/media/..%2F..%2Fetc%2Fpasswd');
  expect(asked).toContainEqual(['media.resolve', { clipId: '../../etc/passwd', what: 'clip' }]);
});

test.each(['POST', 'PUT', 'DELETE', 'PATCH', 'OPTIONS'])('%s is not allowed', async (method) => {
  const refused = await get('app://local/media/c1', { method });
  expect(refused.status).toBe(405);
  expect(refused.headers.get('allow')).toBe('GET, HEAD');
});

test('only headers when only they are asked for', async () => {
  const head = await get('app://local/index.html', { method: 'HEAD' });
  expect(head.headers.get('content-length')).toBe('11');
  expect(head.body).toBeNull();
});
