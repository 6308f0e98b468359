import { createRequire } from 'node:module';
import path from 'node:path';
import { setThreadsCount, setWasmPaths } from '@tensorflow/tfjs-backend-wasm';
import { type GraphModel, loadGraphModel } from '@tensorflow/tfjs-converter';
import { setBackend } from '@tensorflow/tfjs-core';
import type { SourceModel } from './onnx/sourceModel.ts';

const packages = createRequire(import.meta.url);

/** Loads a network into TensorFlow.js, by WebAssembly, to be run on the calling thread alone. Nothing is fetched. */
export async function loadSourceNetwork({ topology, weights, weightBytes }: SourceModel): Promise<GraphModel> {
  const runtime = path.dirname(packages.resolve('@tensorflow/tfjs-backend-wasm'));
  setWasmPaths(`${runtime}${path.sep}`);
  setThreadsCount(1);
  if (!(await setBackend('wasm'))) throw new Error('the WebAssembly backend does not start');
  return loadGraphModel({
    load: async () => ({ modelTopology: topology, weightSpecs: [...weights], weightData: weightBytes.buffer }),
  });
}
