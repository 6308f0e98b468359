import logging from 'electron-log/node';
import { fileForOwner } from '../files/ownerAlone.ts';

/** What a line of the log may tell besides its words: names that the program itself gives, and numbers. */
export type LogFacts = Readonly<Record<string, string | number>>;

/** A log file that turns over at a megabyte. Nothing of people goes in: no names, notes or paths. */
export type Log = {
  readonly info: (what: string, facts?: LogFacts) => void;
  readonly warn: (what: string, facts?: LogFacts) => void;
  readonly error: (what: string, facts?: LogFacts) => void;
};

const mostBytes = 1_000_000;

/** Opens the log in a file; the one before it stays beside it with `.old` in its name. */
export function openLog(file: string): Log {
  const logger = logging.create({ logId: file });
  logger.transports.console.level = false;
  if (logger.transports.ipc) logger.transports.ipc.level = false;
  Object.assign(logger.transports.file, {
    resolvePathFn: () => file,
    maxSize: mostBytes,
    writeOptions: { flag: 'a', mode: fileForOwner, encoding: 'utf8' },
    format: '{iso} {level} {text}',
  });
  const line = (what: string, facts: LogFacts | undefined): string =>
    facts === undefined ? what : `${what} ${JSON.stringify(facts)}`;
  return {
    info: (what, facts) => logger.info(line(what, facts)),
    warn: (what, facts) => logger.warn(line(what, facts)),
    error: (what, facts) => logger.error(line(what, facts)),
  };
}

/** The log where there is no library to keep one in. */
export const noLog: Log = { info: () => undefined, warn: () => undefined, error: () => undefined };

/** What the log tells of an error: its kind, its code, and where in the program it came from; never its message, which can name people and files. */
export function errorFacts(error: unknown): LogFacts {
  if (!(error instanceof Error)) return { kind: typeof error };
  return {
    kind: error.name,
    at: stackOf(error.stack ?? ''),
    ...('code' in error && typeof error.code === 'string' && { code: error.code }),
    ...(error.cause !== undefined && { cause: JSON.stringify(errorFacts(error.cause)) }),
  };
}

const mostStackLines = 6;
/** A line of a stack, with the file it names. */
const stackLine = /^\s*at (?:(?<what>[\w.#<>[\] ]+) \()?(?:file:\/\/)?(?<file>[^()]*?):(?<line>\d+):\d+\)?$/;

function stackOf(stack: string): string {
  const places = stack.split('\n').flatMap((line) => {
    const { what, file, line: number } = stackLine.exec(line)?.groups ?? {};
    if (file === undefined || number === undefined) return [];
    const name = file.split(/[\\/]/).at(-1) ?? '';
    return [`${what ?? '?'} (${name}:${number})`];
  });
  return places.slice(0, mostStackLines).join(' < ');
}
