import { arithmetic } from './arithmetic.ts';
import { arranging } from './arranging.ts';
import { type Operations, openConversion } from './conversion.ts';
import { convolutions } from './convolutions.ts';
import { type Constant, openOnnxGraph } from './onnxGraph.ts';
import { nodeOf, type SourceModel, sortedNodes } from './sourceModel.ts';
import { weightsOf } from './weights.ts';

/** Raised whenever the same network would be converted to something else. */
export const converterVersion = 1;

const operations: Operations = { ...convolutions, ...arithmetic, ...arranging };

/**
 * Converts a MoveNet network to ONNX. It takes one square picture of `side`, three whole numbers (0-255) a pixel, and gives the
 * numbers that the source gives.
 *
 * @param known values that the side alone decides, by the name they are taken by; see `shapesOf`
 * @throws Error when the network holds an operation that is not known here
 */
export function convertModel(
  model: SourceModel,
  side: number,
  known: ReadonlyMap<string, Constant>,
): Uint8Array<ArrayBuffer> {
  const nodes = sortedNodes(model);
  const constants = new Map([...weightsOf(model), ...known]);
  const graph = openOnnxGraph();
  const conversion = openConversion(graph, constants);
  for (const node of nodes) {
    if (node.op === 'Const' || constants.has(node.name)) continue;
    if (node.op === 'Placeholder') {
      conversion.give(node, 'picture');
      conversion.giveSize(node, { height: side, width: side });
      continue;
    }
    const convert = operations[node.op];
    if (!convert) throw new Error(`${node.op} is not known`);
    convert(
      conversion,
      node,
      node.input.filter((input) => !input.startsWith('^')),
    );
  }
  const taken = new Set(nodes.flatMap(({ input }) => input.map(nodeOf)));
  const last = nodes.filter(({ name, op }) => op !== 'Const' && !taken.has(name) && !constants.has(name));
  const [result, ...more] = last;
  if (result === undefined || more.length > 0) throw new Error(`${model.name} should give one answer`);
  const input = { name: 'picture', type: 'int32', shape: [1, side, side, 3] } as const;
  return graph.bytes(input, conversion.channelsLast(result.name));
}
