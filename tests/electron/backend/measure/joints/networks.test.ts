import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { convertedModel } from '../../../../../electron/backend/measure/joints/convertedModel.ts';
import { chooseNetworkRoute, openNetworks } from '../../../../../electron/backend/measure/joints/networkRoute.ts';
import { type Networks, sources } from '../../../../../electron/backend/measure/joints/networks.ts';
import { colourCrop } from '../../../../../electron/backend/measure/joints/resample.ts';
import { probeClip } from '../../../../../electron/backend/media/probe/probeClip.ts';
import { readPictures } from '../../../../../electron/backend/media/read/readPictures.ts';
import { findMediaTools } from '../../../../../electron/backend/media/tools/mediaTools.ts';
import { findClip } from '../../media/clips.ts';
import { temporaryFolder } from '../../workbench.ts';

const throwReason = (reason: unknown) => {
  throw reason;
};

/** A frame of a clip, cut square round its middle, as a network takes it. */
async function pictureOf(name: string, frame: number, side: number): Promise<Int32Array> {
  const tools = await findMediaTools();
  const { table, shown } = await probeClip(tools, findClip(name));
  const range = { firstFrame: frame, lastFrame: frame };
  for await (const { bytes } of readPictures(tools, findClip(name), { table, shown, planes: 'colour', ...range })) {
    const crop = { leftPx: (shown.width - shown.height) / 2, topPx: 0, sidePx: shown.height };
    return colourCrop(bytes, shown, crop, side);
  }
  throw new Error('no frame');
}

const farthest = (one: Float32Array, other: Float32Array): number => {
  expect(one).toHaveLength(other.length);
  return one.reduce((most, value, i) => Math.max(most, Math.abs(value - (other[i] ?? Number.NaN))), 0);
};

describe('the same networks, run natively and by WebAssembly', () => {
  let native: Networks;
  let wasm: Networks;

  beforeAll(async () => {
    native = await openNetworks(await chooseNetworkRoute(throwReason));
    wasm = await openNetworks({ kind: 'wasm' });
  });

  it.each(['one', 'several'] as const)('“%s” gives the same numbers on pictures of clips', async (name) => {
    for (const [clip, frame] of [
      ['squat-side', 80],
      ['squat-side', 5],
      ['hinge-side', 40],
    ] as const) {
      const { side } = sources[name];
      const rgb = await pictureOf(clip, frame, side);
      expect(farthest(await native[name](rgb, side), await wasm[name](rgb, side))).toBeLessThan(1e-5);
    }
  });

  it('finds somebody in those pictures, so that there is something to compare', async () => {
    const found = await native.one(await pictureOf('squat-side', 80, 256), 256);
    expect(found.filter((value, i) => i % 3 === 2 && value > 0.3).length).toBeGreaterThan(10);
  });
});

describe('a converted network', () => {
  const convert = async (folder: string) => Buffer.from(await convertedModel('movenet-thunder', 256, folder));

  it('is kept, and read again instead of being converted', async () => {
    const folder = path.join(temporaryFolder(), 'networks');
    const first = await convert(folder);
    const [file = ''] = readdirSync(folder);
    const kept = readFileSync(path.join(folder, file));
    expect((await convert(folder)).equals(first)).toBe(true);
    expect(readFileSync(path.join(folder, file)).equals(kept)).toBe(true);
    expect(readdirSync(folder)).toEqual([file]);
  });

  it.each([
    ['changed in one byte', (bytes: Buffer) => bytes.fill((bytes[70_000] ?? 0) ^ 1, 70_000, 70_001)],
    ['empty', () => Buffer.alloc(0)],
  ])('is made again when the kept one is %s', async (_, damage) => {
    const folder = path.join(temporaryFolder(), 'networks');
    const first = await convert(folder);
    const [name = ''] = readdirSync(folder);
    const file = path.join(folder, name);
    const whole = readFileSync(file);
    writeFileSync(file, damage(Buffer.from(whole)));
    expect((await convert(folder)).equals(first)).toBe(true);
    expect(readFileSync(file).equals(whole)).toBe(true);
  });

  it('takes away what the same network was converted to before, and nothing else', async () => {
    const folder = temporaryFolder();
    writeFileSync(path.join(folder, 'movenet-thunder-0123456789abcdef.onnx'), 'old');
    writeFileSync(path.join(folder, 'movenet-multipose-0123456789abcdef.onnx'), 'other');
    await convert(folder);
    const names = readdirSync(folder);
    expect(names).toHaveLength(2);
    expect(names).toContain('movenet-multipose-0123456789abcdef.onnx');
    expect(names).not.toContain('movenet-thunder-0123456789abcdef.onnx');
  });

  it('is converted all the same where nothing can be written', async () => {
    const folder = mkdtempSync(path.join(os.tmpdir(), 'rackside-'));
    const file = path.join(folder, 'a file, not a folder');
    writeFileSync(file, '');
    expect((await convert(path.join(file, 'networks'))).length).toBeGreaterThan(10_000_000);
    expect(existsSync(path.join(file, 'networks'))).toBe(false);
    rmSync(folder, { recursive: true });
  });
});
