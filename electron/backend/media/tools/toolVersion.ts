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
