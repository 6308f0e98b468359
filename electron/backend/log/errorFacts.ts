import type { LogFacts } from './log.ts';

/** What the log tells of an error: its kind, its code, and where in the program it came from; never its message, which can name people and files. */
export function errorFacts(error: unknown): LogFacts {
  if (!(error instanceof Error)) return { kind: typeof error };
  return {
    kind: error.name,
    at: placesIn(error.stack ?? ''),
    ...('code' in error && typeof error.code === 'string' && { code: error.code }),
    ...(error.cause !== undefined && { cause: JSON.stringify(errorFacts(error.cause)) }),
  };
}

const mostPlaces = 6;
/** A line of a stack, with the file it names. */
const stackLine = /^\s*at (?:(?<what>[\w.#<>[\] ]+) \()?(?:file:\/\/)?(?<file>[^()]*?):(?<line>\d+):\d+\)?$/;

function placesIn(stack: string): string {
  const places = stack.split('\n').flatMap((line) => {
    const { what, file, line: number } = stackLine.exec(line)?.groups ?? {};
    if (file === undefined || number === undefined) return [];
    const name = file.split(/[\\/]/).at(-1) ?? '';
    return [`${what ?? '?'} (${name}:${number})`];
  });
  return places.slice(0, mostPlaces).join(' < ');
}
