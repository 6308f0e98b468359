/** What only the person at the desk can answer, and what they are shown outside of the window. */
export type SystemDialogs = {
  /** Where to save; null = they changed their mind. */
  readonly whereToSave: (suggestion: SaveSuggestion) => Promise<string | null>;
  /** Which clips; none = they changed their mind. */
  readonly whichClips: () => Promise<readonly string[]>;
  /** Which folder, and what for; null = they changed their mind. */
  readonly whichFolder: (purpose: FolderPurpose) => Promise<string | null>;
  /** Which file to import as a session; null = they changed their mind. */
  readonly whichSessionFile: () => Promise<string | null>;
  /** Shows a file or folder in the system's file manager. */
  readonly showInFolder: (path: string) => void;
};

export type FolderPurpose = 'handOver' | 'receive';

export type SaveSuggestion = {
  /** File name without extension, already safe for any file system. */
  readonly name: string;
  /** Extension without a dot. */
  readonly extension: string;
};
