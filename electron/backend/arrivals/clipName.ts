import path from 'node:path';

/** What a clip is called at first: as its file, composed as people type it; macOS keeps names decomposed. */
export function clipName(file: string): string {
  const name = path.basename(file).normalize('NFC').trim().slice(0, 200);
  return name === '' ? 'clip' : name;
}
