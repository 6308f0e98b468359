import type { Clip } from '../../../../engine/review/review.ts';
import { fileSlug, withoutEnding } from './fileNames.ts';

/** Names of the files with a clip's notes. */
export type NoteNames = { readonly webVtt: string; readonly subRip: string; readonly chapters: string };

/** What the files that are made of one clip are called within the package's folder. */
export type ClipNames = {
  readonly annotated: string;
  readonly original: string;
  readonly loop: (rep: number) => string;
  /** `index`: of the note among the clip's own, from 0. */
  readonly still: (index: number) => string;
  /** Notes lie beside the clip that the page plays, under its name, where players look for them. */
  readonly notes: (played: string | null) => NoteNames;
};

/** A clip to be named, with the number of its notes. */
export type ClipToName = { readonly clip: Pick<Clip, 'id' | 'name' | 'reps'>; readonly noteCount: number };

/**
 * The names of all files that a package may hold of its clips, by the clip's id. A clip is called what its name says,
 * with a number where any of its files would take the name of another clip's.
 */
export function packageNames(clips: readonly ClipToName[]): ReadonlyMap<string, ClipNames> {
  const taken = new Set<string>();
  return new Map(
    clips.map((each) => {
      const slug = fileSlug(withoutEnding(each.clip.name), 'clip');
      let names = namesUnder(slug);
      for (let count = 2; everyName(names, each).some((name) => taken.has(name)); count += 1) {
        names = namesUnder(`${slug}-${count}`);
      }
      for (const name of everyName(names, each)) taken.add(name);
      return [each.clip.id, names];
    }),
  );
}

function namesUnder(slug: string): ClipNames {
  return {
    annotated: `clips/${slug}.mp4`,
    original: `originals/${slug}.mp4`,
    loop: (rep) => `clips/${slug}-rep-${rep}.mp4`,
    still: (index) => `stills/${slug}-${String(index + 1).padStart(2, '0')}.jpg`,
    notes: (played) => {
      const beside = played?.replace(/\.mp4$/, '') ?? `notes/${slug}`;
      return { webVtt: `${beside}.vtt`, subRip: `${beside}.srt`, chapters: `${beside}-reps.vtt` };
    },
  };
}

function everyName(names: ClipNames, { clip, noteCount }: ClipToName): readonly string[] {
  const { annotated, original, loop, still, notes } = names;
  return [
    ...[annotated, original],
    ...clip.reps.map(({ index }) => loop(index)),
    ...Array.from({ length: noteCount }, (_, index) => still(index)),
    ...[annotated, original, null].flatMap((played) => Object.values(notes(played))),
  ];
}
