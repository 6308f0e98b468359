import { expect, test } from 'vitest';
import type { OpenFile } from '../../../../electron/main/page/fileBody.ts';
import { fileBody } from '../../../../electron/main/page/fileBody.ts';

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
