/** Fills the `{places}` of a text. */
export const fill = (template: string, values: Readonly<Record<string, string>>): string =>
  template.replace(/\{(\w+)\}/g, (_, place: string) => values[place] ?? '');
