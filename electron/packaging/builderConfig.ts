import path from 'node:path';
import type { Configuration } from 'electron-builder';
import type { PackagedRuntime } from './packagedRuntime.ts';
import type { Stage } from './stage.ts';
import type { Target } from './target.ts';

/** The window's program; on Linux the name `rackside` is the command's. */
export const windowProgram = 'rackside-desk';

/** What the window opens: names end so that no other program's files are taken. */
export const fileKinds = [
  { type: 'application/vnd.rackside.review+json', extension: 'rackside-review', name: 'Rackside review' },
  { type: 'application/vnd.rackside.handover+zip', extension: 'rackside-handover', name: 'Rackside handover' },
] as const;

export type PackageOrder = {
  readonly stage: Stage;
  readonly runtime: PackagedRuntime;
  readonly output: string;
  readonly pictures: string;
  /** Is called with the folder of the unpacked program, before it is signed. */
  readonly finish: (folder: string) => Promise<void>;
};

/** The one configuration for all systems; what a system makes of it is chosen by the targets that are asked for. */
export function builderConfig({ stage, runtime, output, pictures, finish }: PackageOrder): Configuration {
  const { CSC_LINK: certificate = '', CSC_NAME: installed = '', APPLE_TEAM_ID: team = '' } = process.env;
  const isSigned = certificate !== '' || installed !== '';
  return {
    appId: 'app.rackside.desk',
    productName: 'Rackside',
    copyright: 'The authors of Rackside, MIT licence',
    directories: { app: stage.app, output, buildResources: pictures },
    // biome-ignore lint/suspicious/noTemplateCurlyInString: the builder puts its own values in
    artifactName: 'Rackside-${version}-${os}-${arch}.${ext}',
    asar: true,
    files: ['**/*'],
    // Plain files beside the archive: a backend on a Node of its own can't read from inside one, and programs can't start there.
    extraResources: [{ from: stage.resources, to: '.' }],
    electronVersion: runtime.version,
    ...(runtime.place !== null && { electronDist: runtime.place }),
    electronLanguages: ['en-US', 'de'],
    // The stage holds what is needed. Native modules speak Node-API: one build serves every runtime, nothing is built anew.
    beforeBuild: async () => false,
    // Rackside never updates itself.
    publish: null,
    icon: path.join(pictures, 'icon.png'),
    fileAssociations: fileKinds.map(({ type, extension, name }) => ({
      ext: extension,
      name,
      mimeType: type,
      role: 'Editor' as const,
    })),
    afterPack: ({ appOutDir }) => finish(appOutDir),
    linux: {
      target: ['AppImage'],
      executableName: windowProgram,
      category: 'AudioVideo',
      synopsis: 'Review desk for strength-training technique',
    },
    win: { target: ['nsis', 'zip'] },
    nsis: { oneClick: false, allowToChangeInstallationDirectory: true, deleteAppDataOnUninstall: false },
    mac: {
      target: ['dmg', 'zip'],
      category: 'public.app-category.sports',
      hardenedRuntime: isSigned,
      extendInfo: { NSMicrophoneUsageDescription: 'Rackside records your voice while you narrate a clip.' },
      entitlements: path.join(import.meta.dirname, 'mac', 'entitlements.plist'),
      entitlementsInherit: path.join(import.meta.dirname, 'mac', 'entitlements.plist'),
      // Without a certificate the program is only sealed for the machine that made it, which a hardened one may not be.
      identity: isSigned ? undefined : '-',
      notarize: isSigned && team !== '',
    },
  };
}

/** The window's program in an unpacked package. */
export function programIn(folder: string, { platform }: Target): string {
  switch (platform) {
    case 'linux':
      return path.join(folder, windowProgram);
    case 'win32':
      return path.join(folder, 'Rackside.exe');
    case 'darwin':
      return path.join(folder, 'Rackside.app');
  }
}
