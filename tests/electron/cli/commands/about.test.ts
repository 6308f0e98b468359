import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, it } from 'vitest';
import { rootFolder, runProgram } from '../runCommand.ts';

const packageOf = (folder: string): { readonly version: string } =>
  JSON.parse(readFileSync(path.join(rootFolder, folder, 'package.json'), 'utf8'));

it('tells the versions of Rackside and of what it works with', async () => {
  const { code, stdout } = await runProgram(['about', '--json']);
  expect(code).toBe(0);
  expect(JSON.parse(stdout)).toEqual({
    version: packageOf('.').version,
    ffmpeg: expect.objectContaining({ version: expect.stringMatching(/\d/), path: expect.stringMatching(/ffmpeg/) }),
    ffprobe: expect.objectContaining({ version: expect.stringMatching(/\d/), path: expect.stringMatching(/ffprobe/) }),
    node: process.versions.node,
    onnxRuntime: packageOf('node_modules/onnxruntime-node').version,
  });
});

it('prints the notices of what others made', async () => {
  const { stdout } = await runProgram(['about', '--notices']);
  expect(stdout).toBe(readFileSync(path.join(rootFolder, 'electron/notices/THIRD-PARTY.md'), 'utf8'));
});
