/** The tables that change only through acts, with the columns that name a row. */
export const journaledTables = {
  session: ['id'],
  entry: ['id'],
  clip: ['id'],
  rep: ['id'],
  flag: ['id'],
  flag_rep: ['flag_id', 'rep_id'],
  tick: ['id'],
  drawing: ['id'],
  cover: ['id'],
  clip_set_up: ['clip_id'],
  suggestion_answer: ['clip_id', 'suggestion_id'],
  trainee: ['id'],
  letter_edit: ['id'],
} as const;

export type JournaledTable = keyof typeof journaledTables;

/** A row as SQLite gives it, without blobs: it has to survive JSON. */
export type Row = Readonly<Record<string, string | number | null>>;

/** The name, if a table of that name is journaled; undefined otherwise. */
export function asJournaledTable(name: string): JournaledTable | undefined {
  return Object.hasOwn(journaledTables, name) ? (name as JournaledTable) : undefined;
}
