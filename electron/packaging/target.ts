/** The kind of machine a package is made for. */
export type Target = {
  readonly platform: 'linux' | 'darwin' | 'win32';
  readonly architecture: 'x64' | 'arm64';
};

/** This machine's kind. Throws where no package can be made for it. */
export function thisTarget(): Target {
  const { platform, arch } = process;
  const isKnown = platform === 'linux' || platform === 'darwin' || platform === 'win32';
  if (!isKnown || (arch !== 'x64' && arch !== 'arm64')) throw new Error(`no package for ${platform} on ${arch}`);
  return { platform, architecture: arch };
}
