import {
  type Conversion,
  inputAt,
  numbersIn,
  type Operation,
  type Operations,
  type PictureSize,
} from './conversion.ts';
import type { Constant } from './onnxGraph.ts';
import type { SourceNode } from './sourceModel.ts';

/** A window that goes over a picture: its height or width, its steps, and how far apart its places are. */
type Window = { readonly size: number; readonly step: number; readonly spread: number };
type Padding = { readonly before: number; readonly after: number };

/** "SAME": so many zeros that the result has a place for every step. What doesn't halve goes behind. */
function paddingFor(kind: string | undefined, length: number, { size, step, spread }: Window): Padding {
  if (kind === 'VALID') return { before: 0, after: 0 };
  if (kind !== 'SAME') throw new Error(`padding ${kind} is not known`);
  const reach = (size - 1) * spread + 1;
  const all = Math.max((Math.ceil(length / step) - 1) * step + reach - length, 0);
  return { before: Math.floor(all / 2), after: all - Math.floor(all / 2) };
}

const lengthAfter = (length: number, { size, step, spread }: Window, { before, after }: Padding): number =>
  Math.floor((length + before + after - ((size - 1) * spread + 1)) / step) + 1;

/** The windows down and across of a node, its padding, and the size of the picture it gives. */
function goingOver(node: SourceNode, picture: PictureSize, kernel: readonly [number, number]) {
  const [, stepDown = 1, stepAcross = 1] = node.attr.strides?.list?.i ?? [];
  const [, spreadDown = 1, spreadAcross = 1] = node.attr.dilations?.list?.i ?? [];
  const down = { size: kernel[0], step: stepDown, spread: spreadDown };
  const across = { size: kernel[1], step: stepAcross, spread: spreadAcross };
  const paddingDown = paddingFor(node.attr.padding?.s, picture.height, down);
  const paddingAcross = paddingFor(node.attr.padding?.s, picture.width, across);
  return {
    settings: {
      kernel_shape: kernel,
      strides: [stepDown, stepAcross],
      pads: [paddingDown.before, paddingAcross.before, paddingDown.after, paddingAcross.after],
    },
    spreads: [spreadDown, spreadAcross],
    given: {
      height: lengthAfter(picture.height, down, paddingDown),
      width: lengthAfter(picture.width, across, paddingAcross),
    },
  };
}

/** How a convolution treats the channels: `all` mixes them, `each` has weights of its own for each. */
type Mixing = 'all' | 'each';

function convolution(mixing: Mixing): Operation {
  return (conversion, node, inputs) => {
    const { graph, channelsFirst, value, sizeOf, give, giveSize } = conversion;
    const picture = inputAt(inputs, 0);
    const weights = conversion.constant(inputAt(inputs, 1));
    if (weights === null) throw new Error(`the weights of ${node.name} are missing`);
    const [height = 1, width = 1, channels = 1] = weights.shape;
    const { settings, spreads, given } = goingOver(node, sizeOf(picture), [height, width]);
    const [bias, ...after] = node.attr.fused_ops?.list?.s ?? [];
    if (bias !== undefined && bias !== 'BiasAdd') throw new Error(`${bias} is not known`);
    const operands = [channelsFirst(picture), graph.constant(withOutputFirst(weights, mixing))];
    if (bias) operands.push(value(inputAt(inputs, 2)).name);
    const convolved = graph.add('Conv', operands, {
      ...settings,
      dilations: spreads,
      group: mixing === 'each' ? channels : 1,
    });
    giveSize(node, given);
    give(
      node,
      after.reduce((name, word) => activated(conversion, name, word), convolved),
      'first',
    );
  };
}

function activated({ graph }: Conversion, name: string, word: string): string {
  if (word === 'Relu') return graph.add('Relu', [name]);
  if (word === 'Relu6') return graph.add('Clip', [name, graph.scalar(0), graph.scalar(6)]);
  throw new Error(`${word} is not known`);
}

/** Weights by row, column, input and output channel → by output channel, input channel, row and column. */
function withOutputFirst({ shape, data }: Constant, mixing: Mixing): Constant {
  const [rows = 1, columns = 1, inputs = 1, outputs = 1] = shape;
  const turned = new Float32Array(data.length);
  let from = 0;
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      for (let input = 0; input < inputs; input += 1) {
        for (let output = 0; output < outputs; output += 1) {
          const kernel = mixing === 'each' ? input * outputs + output : output * inputs + input;
          turned[(kernel * rows + row) * columns + column] = data[from] ?? 0;
          from += 1;
        }
      }
    }
  }
  const kernels = mixing === 'each' ? [inputs * outputs, 1] : [outputs, inputs];
  return { shape: [...kernels, rows, columns], data: turned };
}

const greatestOf: Operation = ({ graph, channelsFirst, sizeOf, give, giveSize }, node, inputs) => {
  const [, height = 1, width = 1] = node.attr.ksize?.list?.i ?? [];
  const picture = inputAt(inputs, 0);
  const { settings, given } = goingOver(node, sizeOf(picture), [height, width]);
  giveSize(node, given);
  give(node, graph.add('MaxPool', [channelsFirst(picture)], settings), 'first');
};

const resized: Operation = (conversion, node, inputs) => {
  const { graph, channelsFirst, sizeOf, give, giveSize } = conversion;
  const picture = inputAt(inputs, 0);
  const [height = 1, width = 1] = numbersIn(conversion, inputs[1]);
  const before = sizeOf(picture);
  const half = node.attr.half_pixel_centers?.b ? 'half_pixel' : 'asymmetric';
  const factors = Float32Array.of(1, 1, height / before.height, width / before.width);
  const operands = [channelsFirst(picture), '', graph.constant({ shape: [4], data: factors })];
  const settings = {
    mode: 'linear',
    coordinate_transformation_mode: node.attr.align_corners?.b ? 'align_corners' : half,
  };
  giveSize(node, { height, width });
  give(node, graph.add('Resize', operands, settings), 'first');
};

/** Operations that look at a picture place by place. */
export const convolutions: Operations = {
  _FusedConv2D: convolution('all'),
  FusedDepthwiseConv2dNative: convolution('each'),
  DepthwiseConv2dNative: convolution('each'),
  MaxPool: greatestOf,
  ResizeBilinear: resized,
};
