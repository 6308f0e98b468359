import { mkdtemp, open } from 'node:fs/promises';
import os from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { readFuses, setFuses, wantedFuses } from '../../../electron/packaging/fuses.ts';

// As @electron/fuses documents it: this sentence, a version, a length, and a digit for each fuse: 0 off, 1 on, r taken out.
const sentinel = 'dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX';

async function programWith(wire: string): Promise<string> {
  const file = path.join(await mkdtemp(path.join(os.tmpdir(), 'rackside-fuses-')), 'program');
  const handle = await open(file, 'w');
  await handle.write(Buffer.concat([Buffer.alloc(1000, 7), Buffer.from(sentinel), Buffer.from([1, wire.length])]));
  await handle.write(wire);
  await handle.write(Buffer.alloc(1000, 7));
  await handle.close();
  return file;
}

test('a program with every door open is closed', async () => {
  const program = await programWith('111100110');
  await setFuses(program, { platform: 'linux', architecture: 'x64' });
  const fuses = await readFuses(program);
  expect(fuses).toEqual(new Map(Object.entries(wantedFuses({ platform: 'linux' }))));
  expect(fuses.get('RunAsNode')).toBe(false);
  expect(fuses.get('EnableNodeOptionsEnvironmentVariable')).toBe(false);
  expect(fuses.get('EnableNodeCliInspectArguments')).toBe(false);
  expect(fuses.get('OnlyLoadAppFromAsar')).toBe(true);
});

test('an older program has the fuses set that it knows', async () => {
  const program = await programWith('10100011');
  await setFuses(program, { platform: 'linux', architecture: 'x64' });
  const fuses = await readFuses(program);
  expect(fuses.size).toBe(8);
  expect(fuses.get('GrantFileProtocolExtraPrivileges')).toBe(false);
});

test('the archive is checked wherever the system can', () => {
  expect(wantedFuses({ platform: 'darwin' }).EnableEmbeddedAsarIntegrityValidation).toBe(true);
  expect(wantedFuses({ platform: 'win32' }).EnableEmbeddedAsarIntegrityValidation).toBe(true);
  expect(wantedFuses({ platform: 'linux' }).EnableEmbeddedAsarIntegrityValidation).toBe(false);
});
