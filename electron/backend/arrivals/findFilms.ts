import type { Dirent } from 'node:fs';
import { readdir, stat } from 'node:fs/promises';
import path from 'node:path';
import { isFilm } from '../files/mediaType.ts';

/** A film that was found, with what tells whether it is the same as before. */
export type FoundFilm = {
  readonly path: string;
  /** The folders it lay in, from the one that was named on, the innermost last. */
  readonly folders: readonly string[];
  readonly sizeBytes: number;
  readonly modifiedMs: number;
};

/** What lay under some paths: films, and the names of what is passed over. */
export type FoundFiles = { readonly films: readonly FoundFilm[]; readonly others: readonly string[] };

/** Deeper folders than this are a loop, or no clips. */
const deepest = 12;
const most = 5000;

/**
 * The films among files and in folders, subfolders too, in the order of their names. Of a file that is named itself, its own
 * folder is told, and it counts as a film whatever it is called. Hidden files and links are left alone; a path that
 * leads nowhere is passed over.
 *
 * @param except a folder that is not searched: the library's own
 */
export async function findFilms(
  paths: readonly string[],
  { except }: { readonly except: string },
): Promise<FoundFiles> {
  const films: FoundFilm[] = [];
  const others: string[] = [];
  const found = { films, others, except };
  for (const each of paths) {
    const place = path.resolve(each);
    const kind = await stat(place).catch(() => null);
    if (kind?.isDirectory()) await searchFolder(place, [path.basename(place)], found);
    else if (kind?.isFile()) films.push(filmAt(place, [path.basename(path.dirname(place))], kind));
    else others.push(path.basename(place));
  }
  const once = new Map(films.map((film) => [film.path, film]));
  return { films: [...once.values()], others };
}

type Found = { readonly films: FoundFilm[]; readonly others: string[]; readonly except: string };

async function searchFolder(folder: string, folders: readonly string[], found: Found): Promise<void> {
  if (folder === found.except || folders.length > deepest || found.films.length >= most) return;
  const entries = await readdir(folder, { withFileTypes: true }).catch((): Dirent[] => []);
  const inCount = new Intl.Collator('en', { numeric: true });
  for (const entry of entries.toSorted((a, b) => inCount.compare(a.name, b.name))) {
    const place = path.join(folder, entry.name);
    if (entry.name.startsWith('.')) continue;
    if (entry.isDirectory()) await searchFolder(place, [...folders, entry.name], found);
    else if (!entry.isFile() || !isFilm(entry.name)) found.others.push(entry.name);
    else {
      const facts = await stat(place).catch(() => null);
      if (facts !== null && found.films.length < most) found.films.push(filmAt(place, folders, facts));
    }
  }
}

const filmAt = (
  place: string,
  folders: readonly string[],
  { size, mtimeMs }: { readonly size: number; readonly mtimeMs: number },
): FoundFilm => ({ path: place, folders, sizeBytes: size, modifiedMs: Math.round(mtimeMs) });
