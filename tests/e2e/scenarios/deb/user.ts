import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { promisify } from 'node:util';

const run = promisify(execFile);

/** An ordinary user of this machine, for the run alone. */
export type User = {
  readonly name: string;
  readonly id: number;
  readonly home: string;
  readonly remove: () => Promise<void>;
};

/** Adds an ordinary user with a home folder. */
export async function addUser(name: string): Promise<User> {
  await run('useradd', ['--create-home', '--shell', '/bin/sh', name]);
  const line = (await readFile('/etc/passwd', 'utf8')).split('\n').find((one) => one.startsWith(`${name}:`));
  const [, , id, , , home] = line?.split(':') ?? [];
  if (id === undefined || home === undefined) throw new Error(`${name} is no user`);
  return {
    name,
    id: Number(id),
    home,
    remove: async () => {
      await run('userdel', ['--remove', '--force', name]).catch(() => undefined);
    },
  };
}

/** The words by which root runs a program as a user. */
export const asUser = ({ name }: User): readonly string[] => [
  'setpriv',
  `--reuid=${name}`,
  `--regid=${name}`,
  '--init-groups',
];
