import path from 'node:path';

/** A folder of this name beside the program takes everything that the program keeps. */
export const portableName = 'rackside-portable';

export type ProgramPlace = {
  readonly executable: string;
  readonly platform: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly exists: (folder: string) => boolean;
};

/**
 * The folder that a program carried about on a stick keeps its data in; null where there is none beside it. An AppImage runs from
 * a place of its own and names its file; on a Mac, beside the program is beside `Rackside.app`.
 */
export function portableFolder({ executable, platform, environment, exists }: ProgramPlace): string | null {
  const program = environment.APPIMAGE ?? executable;
  const inBundle = platform === 'darwin' ? path.resolve(program, '../../..') : program;
  const folder = path.join(path.dirname(inBundle), portableName);
  return exists(folder) ? folder : null;
}
