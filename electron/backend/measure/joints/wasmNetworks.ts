import { Tensor, tensor } from '@tensorflow/tfjs-core';
import { type Network, type Networks, sources } from './networks.ts';
import { readSourceModel } from './onnx/sourceModel.ts';
import { loadSourceNetwork } from './sourceNetwork.ts';

/** The networks, run by WebAssembly on the calling thread alone: about a third as fast as natively, on every machine. */
export async function openWasmNetworks(): Promise<Networks> {
  return { one: await wasmNetwork(sources.one.model), several: await wasmNetwork(sources.several.model) };
}

async function wasmNetwork(name: string): Promise<Network> {
  const model = await loadSourceNetwork(readSourceModel(name));
  return async (rgb, side) => {
    const input = tensor(rgb, [1, side, side, 3], 'int32');
    const output = model.execute(input);
    input.dispose();
    if (!(output instanceof Tensor)) throw new Error(`${name} gives more than one answer`);
    const numbers = output.dataSync();
    output.dispose();
    return Float32Array.from(numbers);
  };
}
