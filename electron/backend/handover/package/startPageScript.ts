import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import type { InlineConfig } from 'vite';
import type { PageScript } from '../../../../engine/handover/handoverFolder.ts';

/** What the bundled script is called, in `dist/` beside the backend. */
export const startPageFile = 'startPage.js';

/** How the start page's script is bundled: one readable file that any browser of the last few years runs. */
export function startPageBundle(entry: string): InlineConfig {
  return {
    configFile: false,
    logLevel: 'warn',
    build: {
      copyPublicDir: false,
      emptyOutDir: false,
      minify: false,
      target: 'es2023',
      lib: { entry, formats: ['iife'], name: 'startPage', fileName: () => startPageFile },
    },
  };
}

let made: Promise<PageScript> | undefined;

/** The start page's script: the bundle beside the backend, or in a checkout one made of the sources at first use. */
export function startPageScript(): Promise<PageScript> {
  made ??= scriptText().then((text) => ({ text, sha256: createHash('sha256').update(text).digest('base64') }));
  return made;
}

async function scriptText(): Promise<string> {
  const built = new URL(`./${startPageFile}`, import.meta.url);
  if (existsSync(built)) return readFile(built, 'utf8');
  const { build } = await import('vite');
  const config = startPageBundle(
    fileURLToPath(new URL('../../../../renderer/startPage/startPage.ts', import.meta.url)),
  );
  const output = await build({ ...config, build: { ...config.build, write: false } });
  const chunks = [output].flat().flatMap((bundle) => ('output' in bundle ? bundle.output : []));
  const [script] = chunks.flatMap((chunk) => (chunk.type === 'chunk' ? [chunk.code] : []));
  if (script === undefined) throw new Error('The start page has no script.');
  return script;
}
