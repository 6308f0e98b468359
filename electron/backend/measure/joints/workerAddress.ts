import { existsSync } from 'node:fs';

/**
 * Where a worker thread's file is: beside the source as TypeScript, or in `dist/` as a bundle of the same name.
 *
 * @param name file name without its ending
 * @param beside address of the module that starts the worker, `import.meta.url`
 */
export function workerAddress(name: string, beside: string): URL {
  const source = new URL(`./${name}.ts`, beside);
  return existsSync(source) ? source : new URL(`./${name}.mjs`, beside);
}
