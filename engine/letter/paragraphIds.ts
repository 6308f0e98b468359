/** Room for a part's name and a number after it, within the 80 characters of a paragraph's id. */
const mostLetters = 72;

/**
 * Ids for the paragraphs of one section, by what each is about, so that they stay with it when the order changes. Two
 * of the same key are numbered.
 */
export function paragraphIds(section: string, about: readonly { readonly key: string }[]): string[] {
  const names = about.map(({ key }) => `${section}-${key}`.slice(0, mostLetters));
  return names.map((name, at) => {
    const before = names.slice(0, at).filter((each) => each === name).length;
    return before === 0 ? name : `${name}-${before + 1}`;
  });
}
