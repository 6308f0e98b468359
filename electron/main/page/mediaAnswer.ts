import { open, realpath, stat } from 'node:fs/promises';
import { commonHeaders } from './contentPolicy.ts';
import { fileBody, parseByteRange } from './fileRange.ts';

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
