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
