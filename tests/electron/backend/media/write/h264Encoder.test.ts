import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { findMediaTools, type MediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { findH264Encoder } from '../../../../../electron/backend/media/write/h264Encoder.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'rackside-encoders-'));
afterAll(() => rmSync(folder, { recursive: true }));

const size = { width: 640, height: 360 };

/** A program that names encoders as ffmpeg does, of which only one encodes. */
async function toolsWith(names: readonly string[], works: string): Promise<MediaTools> {
  const program = path.join(folder, `ffmpeg-${works}`);
  const list = names.map((name) => `echo " V..... ${name} by somebody"`).join('\n');
  writeFileSync(
    program,
    `#!/bin/sh\ncase "$*" in\n*-encoders*)\n${list}\n;;\n*"-c:v ${works} "*) ;;\n*) exit 1 ;;\nesac\n`,
  );
  chmodSync(program, 0o755);
  const tools = await findMediaTools();
  return { ...tools, ffmpeg: { ...tools.ffmpeg, path: program } };
}

describe.runIf(process.platform !== 'win32')('the encoder of a machine', () => {
  const listed = ['libx264', 'h264_nvenc', 'h264_qsv', 'h264_vaapi'];

  it.each([
    ['h264_qsv', 'h264_qsv'],
    ['h264_vaapi', 'h264_vaapi'],
    ['h264_videotoolbox', 'libx264'],
    ['nothing', 'libx264'],
  ])('when %s works is %s', async (works, expected) => {
    expect((await findH264Encoder(await toolsWith(listed, works), size)).name).toBe(expected);
  });
});
