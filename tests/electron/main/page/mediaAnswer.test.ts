import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { answerWithFile, fileBody, type OpenFile, parseByteRange } from '../../../../electron/main/page/mediaAnswer.ts';

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

/** A file of bytes that counts how often it was opened and closed. */
function countingFile(content: Uint8Array) {
  const counts = { opened: 0, closed: 0 };
  const open = async (): Promise<OpenFile> => {
    counts.opened += 1;
    const read = async (buffer: Uint8Array, offset: number, length: number, position: number) => {
      const part = content.subarray(position, position + length);
      buffer.set(part, offset);
      return { bytesRead: part.length, buffer };
    };
    const close = async () => {
      counts.closed += 1;
    };
    return { read, close } as unknown as OpenFile;
  };
  return { counts, open };
}

const content = Uint8Array.from({ length: 700_000 }, (_, index) => index % 251);

test('gives exactly the slice, then has closed the file', async () => {
  const { counts, open } = countingFile(content);
  const body = fileBody(open, { first: 1000, last: 650_000 });
  const bytes = Buffer.from(await new Response(body).arrayBuffer());
  expect(bytes.equals(content.slice(1000, 650_001))).toBe(true);
  expect(counts).toEqual({ opened: 1, closed: 1 });
});

test('a body that nobody reads never opens the file', async () => {
  const { counts, open } = countingFile(content);
  const body = fileBody(open, { first: 0, last: 10 });
  await Promise.resolve();
  await body.cancel();
  expect(counts).toEqual({ opened: 0, closed: 0 });
});

test('the file is closed as soon as the last byte was handed out, without a further read', async () => {
  const { counts, open } = countingFile(content);
  const reader = fileBody(open, { first: 0, last: 9 }).getReader();
  expect((await reader.read()).value).toHaveLength(10);
  expect(counts).toEqual({ opened: 1, closed: 1 });
});

test('a reader that leaves half-way closes the file', async () => {
  const { counts, open } = countingFile(content);
  const reader = fileBody(open, { first: 0, last: 699_999 }).getReader();
  await reader.read();
  await reader.cancel();
  expect(counts).toEqual({ opened: 1, closed: 1 });
});

test('a reader that leaves while a read is under way closes the file once', async () => {
  const { counts, open } = countingFile(content);
  const reader = fileBody(open, { first: 0, last: 699_999 }).getReader();
  const reading = reader.read();
  await reader.cancel();
  await reading;
  // One full turn of the event loop, so that the read which was under way has come back.
  await new Promise((resolve) => setImmediate(resolve));
  expect(counts.opened).toBe(counts.closed);
});

test('a file that became shorter ends in an error and is closed', async () => {
  const { counts, open } = countingFile(content.subarray(0, 5));
  await expect(new Response(fileBody(open, { first: 0, last: 99 })).arrayBuffer()).rejects.toThrow();
  expect(counts).toEqual({ opened: 1, closed: 1 });
});

test('a file that can not be opened ends in an error', async () => {
  const body = fileBody(() => Promise.reject(new Error('gone')), { first: 0, last: 9 });
  await expect(new Response(body).arrayBuffer()).rejects.toThrow('gone');
});

// The examples of RFC 9110, section 14.1.2, for a representation of 10,000 bytes.
test.each([
  ['bytes=0-499', { first: 0, last: 499 }],
  ['bytes=500-999', { first: 500, last: 999 }],
  ['bytes=-500', { first: 9500, last: 9999 }],
  ['bytes=9500-', { first: 9500, last: 9999 }],
])('%s of 10,000 bytes', (header, range) => {
  expect(parseByteRange(header, 10_000)).toEqual(range);
});

test('no header asks for the whole', () => {
  expect(parseByteRange(null, 10)).toBe('whole');
});

// RFC 9110, section 14.1.2: a last position beyond the end, or a suffix longer than the whole, is cut.
test('a range over the end is cut at the end', () => {
  expect(parseByteRange('bytes=4-99', 10)).toEqual({ first: 4, last: 9 });
  expect(parseByteRange('bytes=-99', 10)).toEqual({ first: 0, last: 9 });
});

test.each([
  'bytes=10-',
  'bytes=10-12',
  'bytes=5-4',
  'bytes=-0',
  'bytes=-',
  'bytes=',
  'bytes=0-1,3-4',
  'bytes=a-b',
  'bytes=0x0-5',
  'bytes=1.5-3',
  'bytes=+1-3',
  'bytes= 1-3',
  'lines=0-1',
  '0-1',
  '',
  `bytes=${'9'.repeat(400)}-`,
])('"%s" of 10 bytes can not be given', (header) => {
  expect(parseByteRange(header, 10)).toBe('unsatisfiable');
});

test('an empty file has no range to give', () => {
  for (const header of ['bytes=0-', 'bytes=0-0', 'bytes=-1']) expect(parseByteRange(header, 0)).toBe('unsatisfiable');
});

test('whatever is asked, a range that is given lies inside the file', () => {
  const word = fc.oneof(fc.nat(200).map(String), fc.constant(''));
  fc.assert(
    fc.property(word, word, fc.nat(100), (from, to, size) => {
      const range = parseByteRange(`bytes=${from}-${to}`, size);
      if (range === 'unsatisfiable' || range === 'whole') return range !== 'whole';
      return 0 <= range.first && range.first <= range.last && range.last < size;
    }),
  );
});
