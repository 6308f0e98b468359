import { fallbackRuntime } from './fallbackRuntime.ts';
import { downloadRuntime, installedRuntime, overriddenRuntime } from './ownRuntime.ts';
import type { Runtime } from './runtime.ts';
import { chooseRuntime } from './runtime.ts';

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
