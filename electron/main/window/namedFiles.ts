import path from 'node:path';

/** Files that the system asked the program to open, until the page takes them. */
export type NamedFiles = {
  readonly add: (files: readonly string[]) => void;
  /** The next one; null when there is none. */
  readonly take: () => string | null;
};

/** What a review or a handover may be called. */
const known = /\.(rackside-review|rackside-handover|json|zip)$/i;

/** Keeps named files in the order they came; the page is told, and asks when it is ready for one. */
export function keepNamedFiles(tell: () => void): NamedFiles {
  const waiting: string[] = [];
  return {
    add: (files) => {
      waiting.push(...files);
      if (files.length > 0) tell();
    },
    take: () => waiting.shift() ?? null,
  };
}

/**
 * The reviews and handovers among the arguments that a program was started with.
 *
 * @param folder what relative names start from
 */
export function filesNamedIn(args: readonly string[], folder: string): readonly string[] {
  return args
    .slice(1)
    .filter((word) => !word.startsWith('-') && known.test(word))
    .map((word) => path.resolve(folder, word));
}
