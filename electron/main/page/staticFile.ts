import { readFile, realpath, stat } from 'node:fs/promises';
import path from 'node:path';

/** The kinds of file in the built page; no other kind is served. */
const contentTypes: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webp': 'image/webp',
  '.ico': 'image/x-icon',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.wasm': 'application/wasm',
};

export type StaticFile = { readonly content: Buffer<ArrayBuffer>; readonly type: string };

/**
 * A file of the built page.
 *
 * @param folder the folder the page was built into
 * @param urlPath the path of the address as it arrived, still percent-encoded
 * @returns null when there is no such file, or the path leaves the folder by any means: `..`, backslash, drive, NUL, link
 */
export async function readStaticFile(folder: string, urlPath: string): Promise<StaticFile | null> {
  const relative = decodeOnce(urlPath);
  if (relative === null || /[\0\\:]/.test(relative) || relative.startsWith('//')) return null;
  const wanted = path.resolve(folder, `.${relative.startsWith('/') ? '' : '/'}${relative}`);
  const type = contentTypes[path.extname(wanted).toLowerCase()];
  if (type === undefined || !isInside(folder, wanted)) return null;
  try {
    const real = await realpath(wanted);
    if (!isInside(await realpath(folder), real) || !(await stat(real)).isFile()) return null;
    return { content: await readFile(real), type };
  } catch {
    return null;
  }
}

function decodeOnce(text: string): string | null {
  try {
    return decodeURIComponent(text);
  } catch {
    return null;
  }
}

function isInside(folder: string, file: string): boolean {
  const relative = path.relative(folder, file);
  return relative !== '' && relative !== '..' && !relative.startsWith(`..${path.sep}`) && !path.isAbsolute(relative);
}
