/** What a process did to files, in order, as far as a power cut can take it back. */
export type Operation =
  | { readonly do: 'make'; readonly file: string; readonly isFolder: boolean; readonly empties: boolean }
  | { readonly do: 'write'; readonly file: string; readonly at: number | null; readonly bytes: Buffer }
  | { readonly do: 'cut'; readonly file: string; readonly length: number }
  | { readonly do: 'sync'; readonly file: string }
  | { readonly do: 'name'; readonly from: string; readonly to: string }
  | { readonly do: 'remove'; readonly file: string };

/** The calls that `strace` has to follow for that. */
export const followed = [
  ...[
    'openat',
    'open',
    'creat',
    'mkdir',
    'mkdirat',
    'rename',
    'renameat',
    'renameat2',
    'unlink',
    'unlinkat',
    'rmdir',
    'link',
    'linkat',
  ],
  ...[
    'write',
    'writev',
    'pwrite64',
    'pwritev',
    'pwritev2',
    'copy_file_range',
    'sendfile',
    'ftruncate',
    'fallocate',
    'fsync',
    'fdatasync',
  ],
].join(',');

/** The operations of a trace made with `strace -f -y -s` of a length that holds every write. */
export function operationsOf(trace: string): Operation[] {
  const unfinished = new Map<string, string>();
  return trace.split('\n').flatMap((line) => {
    const [, process = '', said = ''] = /^(\d+)\s+(.*)$/.exec(line) ?? [];
    if (said.endsWith('<unfinished ...>')) {
      unfinished.set(process, said.slice(0, -'<unfinished ...>'.length).trimEnd());
      return [];
    }
    const resumed = /^<\.\.\. \w+ resumed>(.*)$/.exec(said);
    const call = resumed === null ? said : `${unfinished.get(process) ?? ''}${resumed[1] ?? ''}`;
    return operationsOfCall(call);
  });
}

const text = '"((?:[^"\\\\]|\\\\.)*)"';
const opened = '(?:\\d+|AT_FDCWD)(?:<([^>]*)>)?';

function operationsOfCall(call: string): Operation[] {
  const [, name = '', inner = '', result = ''] = /^(\w+)\((.*)\)\s+= (-?\d+)/s.exec(call) ?? [];
  if (name === '' || Number(result) < 0) return [];
  const found = (pattern: string): string[] | null => new RegExp(`^${pattern}`, 's').exec(inner)?.slice(1) ?? null;
  switch (name) {
    case 'openat':
    case 'open':
    case 'creat': {
      const [at, file, flags = ''] = found(`(?:${opened}, )?${text}(?:, ([A-Z_|]+))?`) ?? [];
      if (file === undefined || !(name === 'creat' || flags.includes('O_CREAT'))) return [];
      return [{ do: 'make', file: whole(at, file), isFolder: false, empties: flags.includes('O_TRUNC') }];
    }
    case 'mkdir':
    case 'mkdirat': {
      const [at, file] = found(`(?:${opened}, )?${text}`) ?? [];
      return file === undefined ? [] : [{ do: 'make', file: whole(at, file), isFolder: true, empties: false }];
    }
    case 'rename':
    case 'renameat':
    case 'renameat2': {
      const [fromAt, from, toAt, to] = found(`(?:${opened}, )?${text}, (?:${opened}, )?${text}`) ?? [];
      return from === undefined || to === undefined
        ? []
        : [{ do: 'name', from: whole(fromAt, from), to: whole(toAt, to) }];
    }
    case 'unlink':
    case 'unlinkat':
    case 'rmdir': {
      const [at, file] = found(`(?:${opened}, )?${text}`) ?? [];
      return file === undefined ? [] : [{ do: 'remove', file: whole(at, file) }];
    }
    case 'link':
    case 'linkat':
      throw new Error('A file was linked, which this does not know.');
    case 'pwrite64': {
      const [file, bytes, , at] = found(`\\d+<([^>]*)>, ${text}(\\.\\.\\.)?, \\d+, (\\d+)$`) ?? [];
      if (file === undefined) throw new Error(`A write was not understood: ${call.slice(0, 200)}`);
      return [{ do: 'write', file, at: Number(at), bytes: bytesOf(bytes ?? '') }];
    }
    case 'write': {
      const [file, bytes] = found(`\\d+<([^>]*)>, ${text}`) ?? [];
      return file === undefined ? [] : [{ do: 'write', file, at: null, bytes: bytesOf(bytes ?? '') }];
    }
    case 'copy_file_range':
    case 'sendfile': {
      // The first names where it goes to for `sendfile`, the third for `copy_file_range`.
      const names = [...inner.matchAll(/\d+<([^>]*)>/g)].map((each) => each[1] ?? '');
      const file = name === 'sendfile' ? names[0] : names[1];
      return file === undefined ? [] : [{ do: 'write', file, at: null, bytes: Buffer.alloc(0) }];
    }
    case 'writev':
    case 'pwritev':
    case 'pwritev2':
    case 'fallocate': {
      const [file] = found('\\d+<([^>]*)>') ?? [];
      return file === undefined ? [] : [{ do: 'write', file, at: null, bytes: Buffer.alloc(0) }];
    }
    case 'ftruncate': {
      const [file, length] = found('\\d+<([^>]*)>, (\\d+)') ?? [];
      return file === undefined ? [] : [{ do: 'cut', file, length: Number(length) }];
    }
    case 'fsync':
    case 'fdatasync': {
      const [file] = found('\\d+<([^>]*)>') ?? [];
      return file === undefined ? [] : [{ do: 'sync', file }];
    }
    default:
      return [];
  }
}

const whole = (at: string | undefined, file: string): string => {
  const name = bytesOf(file).toString('utf8');
  return name.startsWith('/') || at === undefined ? name : `${at}/${name}`;
};

const escapes: Readonly<Record<string, number>> = { n: 10, t: 9, v: 11, f: 12, r: 13, '"': 34, '\\': 92 };

/** The bytes of a text as `strace` writes it: as in C. */
function bytesOf(written: string): Buffer {
  const bytes: number[] = [];
  for (let at = 0; at < written.length; at += 1) {
    if (written[at] !== '\\') {
      bytes.push(written.charCodeAt(at));
      continue;
    }
    const octal = /^[0-7]{1,3}/.exec(written.slice(at + 1, at + 4))?.[0];
    bytes.push(octal === undefined ? (escapes[written[at + 1] ?? ''] ?? 0) : Number.parseInt(octal, 8));
    at += octal?.length ?? 1;
  }
  return Buffer.from(bytes);
}
