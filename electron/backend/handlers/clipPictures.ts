import { existsSync } from 'node:fs';
import { mkdir, readdir, rm } from 'node:fs/promises';
import path from 'node:path';
import { lookKey } from '../../../engine/framing/lookKey.ts';
import { ticksToUs } from '../../../engine/time/moment.ts';
import type { Context } from '../context/context.ts';
import { closeToOthers, folderForOwner } from '../files/ownerAlone.ts';
import { filmstripHeightPx, makeFilmstrip, makePoster, picturesIn } from '../media/write/pictures.ts';
import type { ClipRow } from '../store/clips.ts';
import { framedPicturesOf, type LibraryFolder } from '../store/folder.ts';
import type { FootageRow } from '../store/footage.ts';
import { isChangedOnDisk } from '../store/footageFiles.ts';
import { framingOf, sectionOf, uprightOf } from '../store/framing.ts';

export type PictureKind = 'poster' | 'filmstrip';

const underWay = new Map<string, Promise<void>>();

/**
 * The file with a picture of a clip as it is framed and trimmed, made when it is first asked for; the footage's own picture where the clip
 * shows all of it as filmed, or where no other can be made.
 */
export async function pictureOfClip(
  context: Context,
  { clip, footage, what }: { readonly clip: ClipRow; readonly footage: FootageRow; readonly what: PictureKind },
): Promise<string | null> {
  const { folder } = context.library();
  const plain = what === 'poster' ? footage.poster_file : footage.filmstrip_file;
  const plainFile = plain && path.join(folder.pictures, plain);
  const look = lookKey({ framing: framingOf(clip), section: sectionOf(clip) });
  if (look === '' || footage.file === null) return plainFile;
  const file = path.join(framedPicturesOf(folder, clip.id), `${what}-${look}.jpg`);
  if (existsSync(file)) return file;
  if (await isChangedOnDisk(context.library(), footage, 'original', 'trustLength')) return plainFile;
  const making = underWay.get(file) ?? make(context, folder, { clip, footage, what, file });
  underWay.set(file, making);
  try {
    await making;
    return file;
  } catch {
    return plainFile;
  } finally {
    underWay.delete(file);
  }
}

type ToMake = {
  readonly clip: ClipRow;
  readonly footage: FootageRow;
  readonly what: PictureKind;
  readonly file: string;
};

async function make(context: Context, folder: LibraryFolder, { clip, footage, what, file }: ToMake): Promise<void> {
  const tools = await context.mediaTools();
  const source = path.join(folder.clips, footage.file ?? '');
  const own = path.dirname(file);
  await mkdir(own, { recursive: true, mode: folderForOwner });
  const as = { shown: uprightOf(footage, clip), look: framingOf(clip) };
  const { fromUs, durationUs } = timeShown(clip, footage);
  if (what === 'poster') {
    await makePoster(tools, source, file, { as, atUs: fromUs + Math.floor(durationUs / 2) });
  } else {
    const pictures = picturesIn(durationUs);
    await makeFilmstrip(tools, source, file, { as, pictures, heightPx: filmstripHeightPx, fromUs, durationUs });
  }
  closeToOthers(file);
  // How it was framed before is not looked at again.
  const before = (await readdir(own)).filter((name) => name.startsWith(`${what}-`) && name.endsWith('.jpg'));
  for (const name of before) if (name !== path.basename(file)) await rm(path.join(own, name), { force: true });
}

/** From when on, since the footage's first frame, and for how long a clip shows its footage; its last frame as long as the others. */
function timeShown(clip: ClipRow, footage: FootageRow): { readonly fromUs: number; readonly durationUs: number } {
  const section = sectionOf(clip);
  if (section === null) return { fromUs: 0, durationUs: footage.duration_us };
  const timeBase = { numerator: footage.time_base_numerator, denominator: footage.time_base_denominator };
  const usualUs = footage.frames > 0 ? footage.duration_us / footage.frames : 0;
  return {
    fromUs: Math.max(0, ticksToUs(section.from.ticks, timeBase) - footage.start_us),
    durationUs: Math.max(1, Math.round(ticksToUs(section.to.ticks - section.from.ticks, timeBase) + usualUs)),
  };
}
