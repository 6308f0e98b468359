import { createHash } from 'node:crypto';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';

/** Schemas and words change without a change of what is seen. */
const leftOut = /\/engine\/(recording|wording|time)\/|\/electron\/contract\/|\/backend\/(store|context)\//;

/** A digest of source files and of all that they import, without comments: it changes when what they do may change. */
export function sourceDigest(entries: readonly string[]): string {
  const seen = new Map<string, string>();
  const waiting = [...entries];
  for (let file = waiting.pop(); file !== undefined; file = waiting.pop()) {
    if (seen.has(file) || leftOut.test(file)) continue;
    const code = withoutComments(readFileSync(file, 'utf8'));
    seen.set(file, code);
    waiting.push(...importsOf(code, path.dirname(file)));
  }
  const hash = createHash('sha256');
  const ordered = [...seen].sort(([one], [other]) => (one < other ? -1 : 1));
  for (const [, code] of ordered) hash.update(code);
  return hash.digest('hex').slice(0, 16);
}

function importsOf(code: string, folder: string): string[] {
  return [...code.matchAll(/(?:^|;)\s*(?:import|export)\s(?!type\s)[^;]*?['"](\.[^'"]+)['"]/g)]
    .map(([, imported = '']) => path.resolve(folder, imported))
    .filter((file) => existsSync(file));
}

const withoutComments = (code: string): string =>
  code
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .replace(/(^|\s)\/\/.*$/gm, '')
    .replace(/\s+/g, ' ');
