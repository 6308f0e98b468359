import { execFile } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { promisify } from 'node:util';

const run = promisify(execFile);
const require = createRequire(import.meta.url);
const root = path.resolve(import.meta.dirname, '../../../..');

/** What was written down of a clip when it was made. */
export type Truth = {
  readonly file: string;
  readonly video: {
    readonly frames: number;
    readonly coded_size: readonly [number, number];
    readonly display_size: readonly [number, number];
    readonly display_rotation_cw_deg: number;
    readonly codec: string;
    readonly time_base: string;
    readonly nominal_fps: number;
    readonly vfr: boolean;
  };
  readonly pts: readonly number[];
};

export type KnownClip = { readonly name: string; readonly path: string; readonly truth: Truth };

/** Every clip of the repository that has a truth file. */
export function knownClips(): KnownClip[] {
  const folder = path.join(root, 'tests/footage');
  return readdirSync(folder)
    .filter((file) => file.endsWith('.truth.json'))
    .map((file) => {
      const name = file.replace('.truth.json', '');
      const truth: Truth = JSON.parse(readFileSync(path.join(folder, file), 'utf8'));
      return { name, path: findClip(name), truth };
    });
}

export function findClip(name: string): string {
  for (const folder of ['seeds/footage', 'tests/footage', 'tests/footage/real']) {
    const file = readdirSync(path.join(root, folder)).find(
      (entry) => /\.(mp4|mov)$/.test(entry) && entry.startsWith(`${name}.`),
    );
    if (file !== undefined) return path.join(root, folder, file);
  }
  throw new Error(`no clip ${name}`);
}

const installed: { readonly path: string } = require('@ffmpeg-installer/ffmpeg');

/** The bundled ffmpeg, run directly: the means by which tests make and read media, independent of the module. */
export async function ffmpeg(...args: readonly string[]): Promise<Buffer> {
  const { stdout } = await run(installed.path, ['-v', 'error', '-nostdin', '-y', ...args], {
    encoding: 'buffer',
    maxBuffer: 64 * 1024 * 1024,
  });
  return stdout;
}

/** One grey value per picture tile: the mean of each of `tiles` equal parts of a JPEG, 0-255. */
export async function greyOfTiles(file: string, tiles: number): Promise<number[]> {
  return [...(await ffmpeg('-i', file, '-vf', `scale=${tiles}:1:flags=area,format=gray`, '-f', 'rawvideo', '-'))];
}
