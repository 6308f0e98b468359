import path from 'node:path';
import type { InlineConfig } from 'vite';
import { startPageBundle, startPageFile } from '../backend/handover/package/startPageScript.ts';
import { distFolder, rootFolder } from './folders.ts';

/** One thing the build makes: what it is made from, where it lands, how. */
export type Part = {
  readonly name: string;
  /** Relative to the root; a change in any of them means building again. */
  readonly inputs: readonly string[];
  /** A file that exists once the part was built, relative to `dist/`. */
  readonly output: string;
  readonly vite: () => InlineConfig;
};

const common = ['electron/contract', 'engine', 'electron/launch/parts.ts', 'package-lock.json'];

type NodeBundle = {
  readonly entry: string;
  readonly output: string;
  readonly format: 'cjs' | 'es';
  /** `all`: everything but Electron and Node goes into the file. `none`: npm packages are loaded at run time. */
  readonly packages: 'all' | 'none';
};

function nodeBundle({ entry, output, format, packages }: NodeBundle): InlineConfig {
  return {
    configFile: false,
    root: rootFolder,
    logLevel: 'warn',
    ssr: packages === 'all' ? { noExternal: true } : {},
    build: {
      ssr: path.join(rootFolder, entry),
      outDir: distFolder,
      emptyOutDir: false,
      copyPublicDir: false,
      minify: false,
      sourcemap: true,
      target: 'node20',
      rolldownOptions: {
        external: ['electron'],
        output: { format, entryFileNames: output, codeSplitting: false },
      },
    },
  };
}

/** Code of the backend's threads; beside the backend, each under the name it is started by. */
const workerFiles = new Map([
  ['measureWorker', 'electron/backend/measure/measureWorker.ts'],
  ['jointWorker', 'electron/backend/measure/joints/jointWorker.ts'],
]);

export const parts: readonly Part[] = [
  {
    name: 'screens',
    inputs: ['renderer', 'vite.config.ts', ...common],
    output: 'renderer/index.html',
    vite: () => ({ configFile: path.join(rootFolder, 'vite.config.ts'), configLoader: 'native', logLevel: 'warn' }),
  },
  {
    name: 'main',
    inputs: ['electron/main', ...common],
    output: 'main.cjs',
    vite: () => nodeBundle({ entry: 'electron/main/main.ts', output: 'main.cjs', format: 'cjs', packages: 'all' }),
  },
  {
    name: 'preload',
    inputs: ['electron/preload', ...common],
    output: 'preload.cjs',
    vite: () =>
      nodeBundle({ entry: 'electron/preload/preload.ts', output: 'preload.cjs', format: 'cjs', packages: 'all' }),
  },
  {
    name: 'backend',
    inputs: ['electron/backend', ...common],
    output: 'backend.mjs',
    vite: () =>
      nodeBundle({ entry: 'electron/backend/child.ts', output: 'backend.mjs', format: 'es', packages: 'none' }),
  },
  {
    name: 'commands',
    inputs: ['electron/cli', 'electron/backend', ...common],
    output: 'cli.mjs',
    vite: () => nodeBundle({ entry: 'electron/cli/main.ts', output: 'cli.mjs', format: 'es', packages: 'none' }),
  },
  {
    name: 'startPage',
    inputs: ['renderer/startPage', 'electron/backend/handover/package', ...common],
    output: startPageFile,
    vite: () => {
      const { build, ...config } = startPageBundle(path.join(rootFolder, 'renderer/startPage/startPage.ts'));
      return { ...config, build: { ...build, outDir: distFolder } };
    },
  },
  ...[...workerFiles].map(
    ([name, entry]): Part => ({
      name,
      inputs: ['electron/backend', ...common],
      output: `${name}.mjs`,
      vite: () => nodeBundle({ entry, output: `${name}.mjs`, format: 'es', packages: 'none' }),
    }),
  ),
];
