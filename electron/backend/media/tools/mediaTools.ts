import { constants } from 'node:fs';
import { access, chmod, stat } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { TimeBase } from '../../../../engine/time/frameTable.ts';
import { ProblemError } from '../../../contract/reply.ts';
import { type Confined, reaches, usualMemoryBytes } from './leastRights.ts';
import { hasWhatIsNeeded } from './needs.ts';
import { runTool } from './startTool.ts';

const require = createRequire(import.meta.url);

export type MediaTool = Confined & {
  readonly version: ToolVersion;
  /** Named by the environment, found on PATH, or the one that came with the app. */
  readonly origin: 'environment' | 'path' | 'bundled';
};

export type MediaTools = {
  readonly ffmpeg: MediaTool;
  readonly ffprobe: MediaTool;
  /** The folder for what is only needed while something is made: the library's own, where one is open. */
  readonly temporary: string;
};

type ToolName = 'ffmpeg' | 'ffprobe';

const variable: Record<ToolName, string> = { ffmpeg: 'FFMPEG_PATH', ffprobe: 'FFPROBE_PATH' };

/**
 * Finds ffmpeg and ffprobe: the one FFMPEG_PATH or FFPROBE_PATH names, else one on PATH when it is newer than the
 * bundled one and can do all that is needed, else the bundled one. Each is to be started with the least rights that it runs
 * with here. Throws a problem when there is none that runs.
 */
export async function findMediaTools(): Promise<MediaTools> {
  const [ffmpeg, ffprobe] = await Promise.all([findTool('ffmpeg'), findTool('ffprobe')]);
  return { ffmpeg, ffprobe, temporary: tmpdir() };
}

/** Which programs are used, for a message: "ffmpeg 5.1.6 (found on PATH), ffprobe N-66595 (bundled)". */
export function describeMediaTools(tools: MediaTools): string {
  const words = { environment: 'named by the environment', path: 'found on PATH', bundled: 'bundled' };
  return (['ffmpeg', 'ffprobe'] as const)
    .map((name) => `${name} ${tools[name].version.label} (${words[tools[name].origin]})`)
    .join(', ');
}

/** What the log tells of them; no paths. */
export function mediaToolFacts({ ffmpeg, ffprobe }: MediaTools): Readonly<Record<string, string>> {
  const facts = ({ version, origin, reach }: MediaTool) => `${version.label} ${origin} ${reach}`;
  return { ffmpeg: facts(ffmpeg), ffprobe: facts(ffprobe) };
}

async function findTool(name: ToolName): Promise<MediaTool> {
  const named = process.env[variable[name]];
  if (named !== undefined && named !== '') {
    const tool = await tryTool(path.resolve(named), name, 'environment');
    if (tool !== null) return tool;
    throw new ProblemError('not-found', 'toolUnfit', { variable: variable[name], tool: name });
  }
  const bundledPath = findBundled(name);
  const [bundled, onPath] = await Promise.all([
    bundledPath === null ? null : tryTool(bundledPath, name, 'bundled'),
    findOnPath(name),
  ]);
  if (onPath !== null && (bundled === null || isNewer(onPath.version, bundled.version))) {
    if (name === 'ffprobe' || (await hasWhatIsNeeded(onPath))) return onPath;
  }
  if (bundled !== null) return bundled;
  throw new ProblemError('not-found', 'toolMissing', { tool: name, variable: variable[name] });
}

async function tryTool(file: string, name: ToolName, origin: MediaTool['origin']): Promise<MediaTool | null> {
  if (origin === 'bundled') await makeExecutable(file).catch(() => undefined);
  for (const reach of reaches) {
    const confined = { path: file, reach, mostMemoryBytes: usualMemoryBytes };
    const { failed, stdout } = await runTool(confined, ['-version'], { timeoutMs: 20_000 });
    const version = failed ? null : readToolVersion(stdout);
    if (version !== null && stdout.startsWith(name)) return { ...confined, version, origin };
  }
  return null;
}

/** Installers that skip package scripts leave the bundled programs without their execute bit. */
async function makeExecutable(file: string): Promise<void> {
  try {
    await access(file, constants.X_OK);
  } catch {
    await chmod(file, 0o755);
  }
}

/** The installer packages throw while loading on a platform they do not carry: that is "none". */
function findBundled(name: ToolName): string | null {
  try {
    const installer: unknown = require(`@${name}-installer/${name}`);
    if (typeof installer !== 'object' || installer === null || !('path' in installer)) return null;
    // A program cannot be started from inside an archive: packers unpack it beside.
    return typeof installer.path === 'string' ? installer.path.replace('app.asar/', 'app.asar.unpacked/') : null;
  } catch {
    return null;
  }
}

async function findOnPath(name: ToolName): Promise<MediaTool | null> {
  const file = process.platform === 'win32' ? `${name}.exe` : name;
  for (const folder of (process.env.PATH ?? '').split(path.delimiter)) {
    if (!path.isAbsolute(folder)) continue;
    const candidate = path.join(folder, file);
    const found = await stat(candidate).catch(() => null);
    if (found?.isFile() !== true) continue;
    const tool = await tryTool(candidate, name, 'path');
    if (tool !== null) return tool;
  }
  return null;
}

/** Which build of ffmpeg or ffprobe this is. */
export type ToolVersion = {
  /** The word after "version": "5.1.6-0+deb12u1", or a commit for builds from source. */
  readonly label: string;
  /** Version of its codec library: the only number that builds from source and releases share. */
  readonly codecLibrary: readonly [major: number, minor: number];
};

/** Reads what `-version` prints; null when it is not ffmpeg's. */
export function readToolVersion(output: string): ToolVersion | null {
  const label = /^ff(?:mpeg|probe) version (\S+)/.exec(output)?.[1];
  const library = /^libavcodec\s+(\d+)\.\s*(\d+)\./m.exec(output);
  if (label === undefined || library === null) return null;
  return { label, codecLibrary: [Number(library[1]), Number(library[2])] };
}

/** True when `first` is the later build. */
export function isNewer(first: ToolVersion, second: ToolVersion): boolean {
  return atLeast(first, second.codecLibrary) && !atLeast(second, first.codecLibrary);
}

function atLeast(version: ToolVersion, [major, minor]: ToolVersion['codecLibrary']): boolean {
  const [ownMajor, ownMinor] = version.codecLibrary;
  return ownMajor > major || (ownMajor === major && ownMinor >= minor);
}

/**
 * The options that keep every frame with its own time. `-fps_mode` came with ffmpeg 5.1 (codec library 59.37);
 * the bundled build of 2018 knows only `-vsync`, which later builds dropped.
 */
export function passthroughOptions(version: ToolVersion): readonly string[] {
  return atLeast(version, [59, 37]) ? ['-fps_mode', 'passthrough'] : ['-vsync', 'passthrough'];
}

/**
 * Options by which a file keeps the times of the frames that it is made from; without them they would be rounded to a rate. Old
 * builds give the last frame no time of its own and then write an edit list that hides it: frames in the order of their times need
 * no such list. Without it, sound comes 21 ms late, which nobody hears.
 */
export function keptTimes(version: ToolVersion, { numerator, denominator }: TimeBase): readonly string[] {
  return [
    ...passthroughOptions(version),
    ...['-enc_time_base', `${numerator}:${denominator}`],
    ...(numerator === 1 ? ['-video_track_timescale', String(denominator)] : []),
    ...['-bf', '0', '-use_editlist', '0', '-avoid_negative_ts', 'disabled'],
  ];
}
