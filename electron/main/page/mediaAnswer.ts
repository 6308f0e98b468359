import { type FileHandle, open, realpath, stat } from 'node:fs/promises';
import { commonHeaders } from './contentPolicy.ts';

/**
 * Answers a request for a clip or picture with the bytes it asks for.
 *
 * @param file where it lies on disk, and its content type
 * @returns 200, 206 with the part, 416 for a range that can't be given, 404 when the file is gone
 */
export async function answerWithFile(
  request: Request,
  file: { readonly path: string; readonly type: string },
): Promise<Response> {
  const found = await locate(file.path);
  if (found === null) return new Response(null, { status: 404, headers: commonHeaders });
  const headers = { ...commonHeaders, 'Content-Type': file.type, 'Accept-Ranges': 'bytes' };
  const range = parseByteRange(request.headers.get('range'), found.size);
  if (range === 'unsatisfiable') {
    return new Response(null, { status: 416, headers: { ...headers, 'Content-Range': `bytes */${found.size}` } });
  }
  const bytes = range === 'whole' ? { first: 0, last: found.size - 1 } : range;
  const length = bytes.last - bytes.first + 1;
  const body = request.method === 'HEAD' || length === 0 ? null : fileBody(() => open(found.path, 'r'), bytes);
  return new Response(body, {
    status: range === 'whole' ? 200 : 206,
    headers: {
      ...headers,
      'Content-Length': String(length),
      ...(range === 'whole' ? {} : { 'Content-Range': `bytes ${bytes.first}-${bytes.last}/${found.size}` }),
    },
  });
}

async function locate(file: string): Promise<{ readonly path: string; readonly size: number } | null> {
  try {
    const real = await realpath(file);
    const facts = await stat(real);
    return facts.isFile() ? { path: real, size: facts.size } : null;
  } catch {
    return null;
  }
}

const chunkBytes = 256 * 1024;

/** What the stream needs of an open file. */
export type OpenFile = Pick<FileHandle, 'read' | 'close'>;

/**
 * A stream of one slice of a file that never leaves the file open: it is opened when the first byte is
 * asked for, closed as soon as the last one is queued, and closed when the reader goes away. A body that is never read
 * opens nothing. (Node's own file-to-web stream can throw out of reach when a reader aborts: nodejs/node#54205.)
 */
export function fileBody(open: () => Promise<OpenFile>, range: ByteRange): ReadableStream<Uint8Array> {
  let position = range.first;
  let file: OpenFile | null = null;
  let cancelled = false;

  const close = async (): Promise<void> => {
    const open = file;
    file = null;
    await open?.close();
  };

  return new ReadableStream<Uint8Array>(
    {
      async pull(controller) {
        try {
          file ??= await open();
          const buffer = new Uint8Array(Math.min(chunkBytes, range.last - position + 1));
          const { bytesRead } = await file.read(buffer, 0, buffer.length, position);
          // The reader may have left while this waited; its `cancel` found nothing to close yet or closes on its own.
          if (cancelled) return await close();
          if (bytesRead === 0) throw new Error('the file became shorter while it was read');
          position += bytesRead;
          controller.enqueue(bytesRead === buffer.length ? buffer : buffer.subarray(0, bytesRead));
          if (position <= range.last) return;
          await close();
          controller.close();
        } catch (error) {
          await close();
          if (!cancelled) controller.error(error);
        }
      },
      async cancel() {
        cancelled = true;
        await close();
      },
    },
    { highWaterMark: 0 },
  );
}

/** First and last byte, both included. */
export type ByteRange = { readonly first: number; readonly last: number };

/**
 * Reads a `Range` header (RFC 9110, section 14): one range of bytes, closed, open-ended or counted from the end.
 *
 * @param header the header's value, or null when there is none
 * @param size length of the whole in bytes
 * @returns the range cut to the size; `whole` without a header; `unsatisfiable` for a range outside, a list of
 *   ranges, another unit, or anything else that is not one range
 */
export function parseByteRange(header: string | null, size: number): ByteRange | 'whole' | 'unsatisfiable' {
  if (header === null) return 'whole';
  const match = /^bytes=(\d{0,15})-(\d{0,15})$/.exec(header.trim());
  if (match === null) return 'unsatisfiable';
  const [, from = '', to = ''] = match;
  if (from === '') return lastBytes(to, size);
  const first = Number(from);
  const last = to === '' ? size - 1 : Math.min(Number(to), size - 1);
  if (first >= size || (to !== '' && Number(to) < first)) return 'unsatisfiable';
  return { first, last };
}

function lastBytes(count: string, size: number): ByteRange | 'unsatisfiable' {
  const length = count === '' ? 0 : Number(count);
  if (length === 0 || size === 0) return 'unsatisfiable';
  return { first: Math.max(0, size - length), last: size - 1 };
}
