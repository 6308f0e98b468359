import { FuseState, FuseV1Options, FuseVersion, flipFuses, getCurrentFuseWire } from '@electron/fuses';
import type { Target } from './target.ts';

type FuseName = keyof typeof FuseV1Options;

/** The runtime's fuses, burned into the program: no arguments or variables turn it into something else than Rackside. */
const everywhere: Readonly<Record<FuseName, boolean>> = {
  RunAsNode: false,
  EnableCookieEncryption: false,
  EnableNodeOptionsEnvironmentVariable: false,
  EnableNodeCliInspectArguments: false,
  EnableEmbeddedAsarIntegrityValidation: true,
  OnlyLoadAppFromAsar: true,
  LoadBrowserProcessSpecificV8Snapshot: false,
  GrantFileProtocolExtraPrivileges: false,
  WasmTrapHandlers: true,
};

/** How the fuses of a program have to stand. The archive's integrity is checked on macOS and Windows; Linux knows no such check. */
export function wantedFuses({ platform }: Pick<Target, 'platform'>): Readonly<Record<FuseName, boolean>> {
  return { ...everywhere, EnableEmbeddedAsarIntegrityValidation: platform !== 'linux' };
}

/** Sets the fuses of a program; it has to be signed afterwards. An older runtime lacks the newest ones. */
export async function setFuses(program: string, target: Target): Promise<void> {
  const wanted = wantedFuses(target);
  const present = await readFuses(program);
  const states = Object.fromEntries([...present.keys()].map((name) => [FuseV1Options[name], wanted[name]]));
  await flipFuses(program, {
    version: FuseVersion.V1,
    resetAdHocDarwinSignature: target.platform === 'darwin' && target.architecture === 'arm64',
    ...states,
  });
}

/** How the fuses of a program stand. */
export async function readFuses(program: string): Promise<ReadonlyMap<FuseName, boolean>> {
  const { version: _, ...wire } = await getCurrentFuseWire(program);
  const fuses = new Map<FuseName, boolean>();
  for (const [number, state] of Object.entries(wire)) {
    const name = fuseNames.find((one) => FuseV1Options[one] === Number(number));
    if (name !== undefined && state !== FuseState.REMOVED) fuses.set(name, state === FuseState.ENABLE);
  }
  return fuses;
}

const fuseNames = [
  'RunAsNode',
  'EnableCookieEncryption',
  'EnableNodeOptionsEnvironmentVariable',
  'EnableNodeCliInspectArguments',
  'EnableEmbeddedAsarIntegrityValidation',
  'OnlyLoadAppFromAsar',
  'LoadBrowserProcessSpecificV8Snapshot',
  'GrantFileProtocolExtraPrivileges',
  'WasmTrapHandlers',
] as const satisfies readonly FuseName[];
