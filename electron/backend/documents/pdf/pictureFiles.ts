import type { Picture, RacksideDocument } from '../../../../engine/document/document.ts';

/** Pictures that documents name, by the name. */
export type PictureFiles = ReadonlyMap<string, Uint8Array>;

const embedded = /^data:image\/(?:jpeg|png);base64,([A-Za-z0-9+/=]*)$/;

/** The picture a source names or holds; null where neither. */
export function pictureBytes(source: string, files: PictureFiles): Uint8Array | null {
  const [, base64] = embedded.exec(source) ?? [];
  return base64 === undefined ? (files.get(source) ?? null) : Buffer.from(base64, 'base64');
}

/** JPEG and PNG by the first bytes of the file (ISO/IEC 10918-1, marker SOI; PNG specification, signature). */
function typeOf(bytes: Uint8Array): string | null {
  const starts = (...first: readonly number[]) => first.every((byte, at) => bytes[at] === byte);
  if (starts(0xff, 0xd8, 0xff)) return 'image/jpeg';
  return starts(0x89, 0x50, 0x4e, 0x47) ? 'image/png' : null;
}

function embed(picture: Picture, files: PictureFiles): Picture {
  const bytes = files.get(picture.source);
  const type = bytes === undefined ? null : typeOf(bytes);
  if (bytes === undefined || type === null) return picture;
  return { ...picture, source: `data:${type};base64,${Buffer.from(bytes).toString('base64')}` };
}

/** The document with its pictures inside it, so that one file is all of it; a picture without a file stays a name. */
export function withPicturesInside(document: RacksideDocument, files: PictureFiles): RacksideDocument {
  const blocks = document.blocks.map((block) => (block.kind === 'picture' ? embed(block, files) : block));
  return { ...document, blocks };
}
