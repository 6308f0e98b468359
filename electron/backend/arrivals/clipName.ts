import path from 'node:path';

/** What a clip is called at first: as its file. */
export function clipName(file: string): string {
  const name = path.basename(file).trim().slice(0, 200);
  return name === '' ? 'clip' : name;
}
