import type { Clip } from '../../../../engine/review/review.ts';

const longest = 60;
/** Names that Windows keeps for devices, whatever their ending. */
const reserved = /^(?:con|prn|aux|nul|com\d|lpt\d)$/;

/** A text as part of a file's name that every system takes: letters and digits of any script, joined by dashes. */
export function fileSlug(text: string, otherwise: string): string {
  const slug = [
    ...text
      .normalize('NFC')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-'),
  ]
    .slice(0, longest)
    .join('')
    .replace(/^-+|-+$/g, '');
  if (slug === '') return otherwise;
  return reserved.test(slug) ? `${otherwise}-${slug}` : slug;
}

/** Gives each text a name of its own, never one that was given before. */
export function uniqueSlugs(otherwise: string): (text: string) => string {
  const taken = new Set<string>();
  return (text) => {
    const slug = fileSlug(text, otherwise);
    let name = slug;
    for (let count = 2; taken.has(name); count += 1) name = `${slug}-${count}`;
    taken.add(name);
    return name;
  };
}

/** A clip's name without the ending of the file it came as. */
export const withoutEnding = (name: string): string => name.replace(/\.(?:mp4|mov|m4v|mkv|webm|avi)$/i, '');

/** Names of the files with a clip's notes. */
export type NoteNames = { readonly webVtt: string; readonly subRip: string; readonly chapters: string };

/** What the files that are made of one clip are called within the package's folder. */
export type ClipNames = {
  readonly annotated: string;
  readonly original: string;
  /** A copy of the original, to be played in its place. */
  readonly plain: string;
  /** What was said over it, as a film. */
  readonly narrated: string;
  readonly loop: (rep: number) => string;
  /** `index`: of the note among the clip's own, from 0. */
  readonly still: (index: number) => string;
  /** The picture that a player shows before it plays. */
  readonly poster: string;
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
    plain: `clips/${slug}-plain.mp4`,
    narrated: `clips/${slug}-narrated.mp4`,
    loop: (rep) => `clips/${slug}-rep-${rep}.mp4`,
    still: (index) => `stills/${slug}-${String(index + 1).padStart(2, '0')}.jpg`,
    poster: `stills/${slug}-poster.jpg`,
    notes: (played) => {
      const beside = played?.replace(/\.mp4$/, '') ?? `notes/${slug}`;
      return { webVtt: `${beside}.vtt`, subRip: `${beside}.srt`, chapters: `${beside}-reps.vtt` };
    },
  };
}

function everyName(names: ClipNames, { clip, noteCount }: ClipToName): readonly string[] {
  const { annotated, original, plain, narrated, loop, still, poster, notes } = names;
  return [
    ...[annotated, original, plain, narrated, poster],
    ...clip.reps.map(({ index }) => loop(index)),
    ...Array.from({ length: noteCount }, (_, index) => still(index)),
    ...[annotated, original, plain, null].flatMap((played) => Object.values(notes(played))),
  ];
}
