import { inputAt, numberIn, numbersIn, type Operation, type Operations } from './conversion.ts';
import { elementType } from './onnxGraph.ts';
import { slice } from './slicing.ts';

const unpack: Operation = ({ graph, channelsLast, give, keepSize }, node, inputs) => {
  const count = node.attr.num?.i ?? 1;
  const axis = node.attr.axis?.i ?? 0;
  const whole = channelsLast(inputAt(inputs, 0));
  const parts = count === 1 ? [whole] : graph.addSeveral(count, 'Split', [whole], { axis });
  keepSize(node);
  parts.forEach((part, result) => {
    give(node, graph.add('Squeeze', [part, graph.places([axis])]), 'last', result);
  });
};

const split: Operation = (conversion, node, inputs) => {
  const axis = numberIn(conversion, inputs[0]);
  const whole = conversion.channelsLast(inputAt(inputs, 1));
  conversion.graph.addSeveral(node.attr.num_split?.i ?? 1, 'Split', [whole], { axis }).forEach((part, result) => {
    conversion.give(node, part, 'last', result);
  });
};

const pack: Operation = ({ graph, channelsLast, give }, node, inputs) => {
  const axis = node.attr.axis?.i ?? 0;
  const parts = inputs.map((input) => graph.add('Unsqueeze', [channelsLast(input), graph.places([axis])]));
  give(node, graph.add('Concat', parts, { axis }));
};

const concatenate: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give, keepSize } = conversion;
  const axis = numberIn(conversion, inputs.at(-1));
  keepSize(node);
  give(node, graph.add('Concat', inputs.slice(0, -1).map(channelsLast), { axis }));
};

const expand: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give, keepSize } = conversion;
  const axis = graph.places([numberIn(conversion, inputs[1])]);
  keepSize(node);
  give(node, graph.add('Unsqueeze', [channelsLast(inputAt(inputs, 0)), axis]));
};

const squeeze: Operation = ({ graph, channelsLast, give, keepSize }, node, inputs) => {
  const axes = node.attr.squeeze_dims?.list?.i ?? [];
  const whole = channelsLast(inputAt(inputs, 0));
  keepSize(node);
  give(node, graph.add('Squeeze', axes.length > 0 ? [whole, graph.places(axes)] : [whole]));
};

const reshape: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give } = conversion;
  const shape = graph.places(numbersIn(conversion, inputs[1]));
  give(node, graph.add('Reshape', [channelsLast(inputAt(inputs, 0)), shape]));
};

const tile: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give } = conversion;
  const times = graph.places(numbersIn(conversion, inputs[1]));
  give(node, graph.add('Tile', [channelsLast(inputAt(inputs, 0)), times]));
};

const placeOfGreatest: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give } = conversion;
  const axis = numberIn(conversion, inputs[1]);
  const place = graph.add('ArgMax', [channelsLast(inputAt(inputs, 0))], { axis, keepdims: 0 });
  give(node, graph.add('Cast', [place], { to: elementType.int32 }));
};

const gather: Operation = ({ graph, channelsLast, give }, node, inputs) => {
  const places = graph.add('Cast', [channelsLast(inputAt(inputs, 1))], { to: elementType.int64 });
  give(node, graph.add('GatherND', [channelsLast(inputAt(inputs, 0)), places]));
};

const greatestFew: Operation = (conversion, node, inputs) => {
  const { graph, channelsLast, give } = conversion;
  const count = graph.places([numberIn(conversion, inputs[1])]);
  const [values, places] = graph.addSeveral(2, 'TopK', [channelsLast(inputAt(inputs, 0)), count], { axis: -1 });
  if (values === undefined || places === undefined) throw new Error(`${node.name} gives too little`);
  give(node, values);
  give(node, graph.add('Cast', [places], { to: elementType.int32 }), 'last', 1);
};

const identity: Operation = ({ value, give, keepSize }, node, inputs) => {
  const { name, channels } = value(inputAt(inputs, 0));
  keepSize(node);
  give(node, name, channels);
};

/** Operations that pick numbers out and put them in another order or shape. */
export const arranging: Operations = {
  Unpack: unpack,
  Split: split,
  Pack: pack,
  ConcatV2: concatenate,
  ExpandDims: expand,
  Squeeze: squeeze,
  Reshape: reshape,
  Tile: tile,
  ArgMax: placeOfGreatest,
  GatherNd: gather,
  TopKV2: greatestFew,
  StridedSlice: slice,
  Identity: identity,
};
