import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { answerWithFile } from '../../../../electron/main/page/mediaAnswer.ts';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(path.join(os.tmpdir(), 'rackside-'));
  await writeFile(path.join(folder, 'clip.mp4'), 'abcdefghij');
  await writeFile(path.join(folder, 'empty.mp4'), '');
});
afterAll(() => rm(folder, { recursive: true }));

const ask = (name: string, init: RequestInit = {}) =>
  answerWithFile(new Request('app://local/media/c', init), { path: path.join(folder, name), type: 'video/mp4' });

test('the whole file without a range', async () => {
  const answer = await ask('clip.mp4');
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-length')).toBe('10');
  expect(answer.headers.get('accept-ranges')).toBe('bytes');
  expect(answer.headers.get('cache-control')).toBe('no-store');
  expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
  expect(await answer.text()).toBe('abcdefghij');
});

test('a part with its place in the whole', async () => {
  const answer = await ask('clip.mp4', { headers: { range: 'bytes=2-5' } });
  expect(answer.status).toBe(206);
  expect(answer.headers.get('content-range')).toBe('bytes 2-5/10');
  expect(answer.headers.get('content-length')).toBe('4');
  expect(await answer.text()).toBe('cdef');
});

test('a part outside the file', async () => {
  const answer = await ask('clip.mp4', { headers: { range: 'bytes=10-' } });
  expect(answer.status).toBe(416);
  expect(answer.headers.get('content-range')).toBe('bytes */10');
  expect(answer.body).toBeNull();
});

test('only the headers when only they are asked for', async () => {
  const answer = await ask('clip.mp4', { method: 'HEAD' });
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-length')).toBe('10');
  expect(answer.body).toBeNull();
});

test('an empty file is empty', async () => {
  const answer = await ask('empty.mp4');
  expect(answer.status).toBe(200);
  expect(await answer.text()).toBe('');
});

test('a file that is gone, or a folder, is not found', async () => {
  expect((await ask('gone.mp4')).status).toBe(404);
  expect((await ask('.')).status).toBe(404);
});
