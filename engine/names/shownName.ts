import { charactersOf, givenName } from './nameParts.ts';

/** How a trainee is named in what leaves the desk. */
export const nameModes = ['full', 'first', 'initials', 'none'] as const;
export type NameMode = (typeof nameModes)[number];

/** Replaces a hidden name, in every language. */
export const nobody = 'Trainee';

/** Whether this is what stands for a hidden name: two who are called so are not one person. */
export const isNameless = (name: string): boolean => new RegExp(`^${nobody}(?: \\d+)?$`, 'i').test(name.trim());

/** What to call a nameless person beside others, so that lists tell them apart: "Trainee", "Trainee 2". */
export function namelessBeside(names: readonly string[]): string {
  const taken = new Set(names.map((name) => name.trim().toLowerCase()));
  let name: string = nobody;
  for (let count = 2; taken.has(name.toLowerCase()); count += 1) name = `${nobody} ${count}`;
  return name;
}

/** The first character of a word as people count them, with a full stop. */
export function initial(word: string): string {
  const [first = word] = charactersOf(word);
  return `${first}.`;
}

/** A name as the trainee wants it shown; never empty. */
export function shownName(fullName: string, mode: NameMode): string {
  switch (mode) {
    case 'full':
      return fullName;
    case 'first':
      return givenName(fullName);
    case 'initials':
      return fullName.trim().split(/\s+/u).map(initial).join('');
    case 'none':
      return nobody;
  }
}
