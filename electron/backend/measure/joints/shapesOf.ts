import { zeros } from '@tensorflow/tfjs-core';
import type { Constant } from './onnx/onnxGraph.ts';
import { nodeOf, type SourceModel, type SourceNode, sortedNodes } from './onnx/sourceModel.ts';
import { loadSourceNetwork } from './sourceNetwork.ts';

/**
 * The values in a network that the side of its picture alone decides, by the name they are taken by: the network is run once
 * on a black picture. Those that only lead to others are empty. An empty map when no value depends on it.
 */
export async function shapesOf(model: SourceModel, side: number): Promise<ReadonlyMap<string, Constant>> {
  const nodes = sortedNodes(model);
  const fixed = fixedNodes(nodes);
  const wanted = [
    ...new Set(
      nodes
        .filter(({ name }) => !fixed.has(name))
        .flatMap(({ input }) => input)
        .filter((input) => fixed.get(nodeOf(input)) === 'computed'),
    ),
  ];
  const shapes = new Map<string, Constant>();
  if (wanted.length === 0) return shapes;
  const network = await loadSourceNetwork(model);
  const black = zeros([1, side, side, 3], 'int32');
  const values = [network.execute(black, wanted)].flat();
  wanted.forEach((name, i) => {
    const value = values[i];
    if (value === undefined || !('dataSync' in value)) throw new Error(`${name} has no value`);
    shapes.set(name, { shape: value.shape, data: value.dataSync().slice() });
  });
  network.dispose();
  for (const [name, kind] of fixed) {
    if (kind === 'computed' && !shapes.has(name)) shapes.set(name, { shape: [0], data: new Int32Array(0) });
  }
  return shapes;
}

/** Nodes whose value does not depend on what the picture shows. */
function fixedNodes(sorted: readonly SourceNode[]): ReadonlyMap<string, 'weight' | 'computed'> {
  const fixed = new Map<string, 'weight' | 'computed'>();
  for (const { name, op, input } of sorted) {
    if (op === 'Const') fixed.set(name, 'weight');
    else if (op === 'Shape') fixed.set(name, 'computed');
    else if (op !== 'Placeholder' && input.length > 0 && input.every((one) => fixed.has(nodeOf(one)))) {
      fixed.set(name, 'computed');
    }
  }
  return fixed;
}
